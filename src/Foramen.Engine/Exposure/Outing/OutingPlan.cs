using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>
/// A day of sheets: which place when, so that most sheets can be hoped for. Every order of the places is tried (up to seven places); within an order each place is
/// worked as early as its windows allow, once. Immutable.
/// </summary>
/// <remarks>
/// The way is the straight line at walking pace. Sheets are made one after the other: each is processed before the next is flashed. Visiting a place
/// twice is not considered. Odds are of sun on the sheet, not of a keeper.
/// </remarks>
public sealed record OutingPlan
{
    /// <summary>Most places for one day.</summary>
    public const int MostPlaces = 7;

    /// <summary>Metres walked in a second with a tripod (common practice: 4 km in an hour).</summary>
    public const double WalkingMetresPerSecond = 4000.0 / 3600;

    private OutingPlan(IReadOnlyList<OutingStep> steps, IReadOnlyList<string> leftOut)
    {
        Steps = steps;
        LeftOut = leftOut;
    }

    /// <summary>What is done, in order of time, without gaps between the first and the last.</summary>
    public IReadOnlyList<OutingStep> Steps { get; }

    /// <summary>Places whose light does not fit into the day.</summary>
    public IReadOnlyList<string> LeftOut { get; }

    /// <summary>Sheets exposed.</summary>
    public int Sheets => Steps.Count(step => step.Kind == OutingStepKind.Expose);

    /// <summary>Sheets that get sun, on average.</summary>
    public double SheetsHopedFor => Steps.Where(step => step.Kind == OutingStepKind.Expose).Sum(step => step.SunOdds.Fraction);

    /// <summary>Plans a day.</summary>
    /// <param name="stops">The places, 1 to 7.</param>
    /// <param name="times">How long the hands need.</param>
    /// <param name="cloud">The chance of cloud.</param>
    /// <param name="from">When the day begins, at <paramref name="start"/>.</param>
    /// <param name="to">When all must be done.</param>
    /// <param name="mostSheets">Sheets that paper and bottle allow, 1 to 100.</param>
    /// <param name="start">Where the day begins; at the first place if left out.</param>
    /// <exception cref="RefusalException">No places or too many, a day that ends before it begins, or numbers out of range.</exception>
    public static OutingPlan For(
        IReadOnlyList<OutingStop> stops, SheetTimes times, CloudChance cloud, DateTimeOffset from, DateTimeOffset to, int mostSheets, GeographicPosition? start = null)
    {
        Guard.Within(stops.Count, 1, MostPlaces, "the number of places for one day");
        Guard.Within(mostSheets, 1, 100, "the number of sheets");
        Guard.Within((to - from).TotalHours, 0, 36, "the length of the day", "h");
        foreach (var stop in stops)
        {
            Guard.Within(stop.SheetsWanted, 1, 20, $"the number of sheets at {stop.Name}");
        }

        var best = (Steps: new List<OutingStep>(), Hope: 0.0, End: from);
        var used = new bool[stops.Count];
        Extend([], from, start, 0, 0);
        var visited = best.Steps.Select(step => step.Place).ToHashSet(StringComparer.Ordinal);
        return new OutingPlan(best.Steps, [.. stops.Where(stop => !visited.Contains(stop.Name)).Select(stop => stop.Name)]);

        void Extend(List<OutingStep> steps, DateTimeOffset now, GeographicPosition? here, int sheets, double hope)
        {
            if (hope > best.Hope + 1e-9 || (hope > best.Hope - 1e-9 && hope > 0 && now < best.End))
            {
                best = ([.. steps], hope, now);
            }

            if (sheets >= mostSheets)
            {
                return;
            }

            for (var i = 0; i < stops.Count; i++)
            {
                if (used[i])
                {
                    continue;
                }

                var length = steps.Count;
                var (end, made, gained) = Visit(steps, stops[i], now, here, sheets);
                if (made > 0)
                {
                    used[i] = true;
                    Extend(steps, end, stops[i].Position, sheets + made, hope + gained);
                    used[i] = false;
                }

                steps.RemoveRange(length, steps.Count - length);
            }
        }

        (DateTimeOffset End, int Made, double Gained) Visit(List<OutingStep> steps, OutingStop stop, DateTimeOffset now, GeographicPosition? here, int sheets)
        {
            var length = steps.Count;
            void Add(OutingStepKind kind, TimeSpan time, int sheet = 0, Probability odds = default)
            {
                if (time > TimeSpan.Zero)
                {
                    steps.Add(new OutingStep(kind, stop.Name, now, now + time, sheet, odds));
                    now += time;
                }
            }

            if (here is not null)
            {
                Add(OutingStepKind.Walk, TimeSpan.FromSeconds(here.MetresTo(stop.Position) / WalkingMetresPerSecond));
            }

            Add(OutingStepKind.SetUp, Span(times.SetUp));
            var (made, gained) = (0, 0.0);
            var (flash, processing) = (Span(times.Flash), Span(times.Processing));
            foreach (var window in stop.Windows)
            {
                while (made < stop.SheetsWanted && sheets + made < mostSheets)
                {
                    // The flash may be given while the light is awaited.
                    var open = now + flash > window.Start ? now + flash : window.Start;
                    var exposure = Span(stop.ExposureAt(open));
                    if (exposure <= TimeSpan.Zero || open + exposure > window.End || open + exposure + processing > to)
                    {
                        break;
                    }

                    Add(OutingStepKind.Wait, open - flash - now);
                    Add(OutingStepKind.Flash, flash, sheets + made + 1);
                    var odds = Probability.FromFraction(1 - cloud.At(now).Fraction);
                    Add(OutingStepKind.Expose, exposure, sheets + made + 1, odds);
                    Add(OutingStepKind.Process, processing, sheets + made + 1);
                    (made, gained) = (made + 1, gained + odds.Fraction);
                }
            }

            if (made == 0)
            {
                steps.RemoveRange(length, steps.Count - length);
            }

            return (now, made, gained);
        }
    }

    private static TimeSpan Span(Duration duration) => TimeSpan.FromSeconds(duration.Seconds);
}
