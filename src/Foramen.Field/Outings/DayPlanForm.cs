using System.Globalization;
using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Texts;
using Foramen.Field.Time;
using Foramen.Field.Units;
using Foramen.Journal.Fold;

namespace Foramen.Field.Outings;

/// <summary>A day of sheets as it is asked for: texts until they are read, a message beside each that cannot be; and the plan that follows.</summary>
public sealed class DayPlanForm(Clock clock)
{
    /// <summary>The day.</summary>
    public DateOnly Date { get; set; } = DateOnly.FromDateTime(clock.Now.DateTime);

    /// <summary>When it begins, “08:00”.</summary>
    public string From { get; set; } = "08:00";

    /// <summary>When all must be done.</summary>
    public string To { get; set; } = "20:00";

    /// <summary>Chance of cloud, percent.</summary>
    public string Cloud { get; set; } = "30";

    /// <summary>Sheets that paper and bottle allow.</summary>
    public string Sheets { get; set; } = "8";

    /// <summary>Sheets wanted at each place.</summary>
    public string Each { get; set; } = "2";

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>The plan; null before it was asked for and where something is wrong.</summary>
    public OutingPlan? Plan { get; private set; }

    /// <summary>Places that could not be planned for, because they are not described enough.</summary>
    public IReadOnlyList<string> Undescribed { get; private set; } = [];

    /// <summary>Plans the day over all places that are described enough.</summary>
    public void Make(Ledger ledger)
    {
        Messages.Clear();
        Plan = null;
        var cloud = Number(nameof(Cloud), Cloud, 0, 100, "the chance of cloud", "%");
        var sheets = Number(nameof(Sheets), Sheets, 1, 100, "the number of sheets", "");
        var each = Number(nameof(Each), Each, 1, 20, "the number of sheets at a place", "");
        var from = Hour(nameof(From), From);
        var to = Hour(nameof(To), To);
        if (from >= to && Messages.Count == 0)
        {
            Messages[nameof(To)] = Words.DayPlan.EndsFirst;
        }

        if (Messages.Count > 0)
        {
            return;
        }

        try
        {
            var camera = ledger.Cameras.All.LastOrDefault()?.Current.Body;
            var paper = ledger.Papers.All.LastOrDefault()?.Current.Body;
            var days = ledger.Places.All.Select(place => (place.Body.Name, Day: PlaceDay.Of(place.Body, camera, paper, clock))).ToList();
            Undescribed = [.. days.Where(day => day.Day is null).Select(day => day.Name)];
            var stops = days.Select(day => day.Day).OfType<PlaceDay>().Take(OutingPlan.MostPlaces).Select(day => day.Stop(Date, from, to, (int)each)).ToList();
            if (stops.Count == 0)
            {
                Messages[""] = Words.DayPlan.NoPlaces;
                return;
            }

            Plan = OutingPlan.For(stops, new SheetTimes(), CloudChance.Of(Probability.FromFraction(cloud / 100)), from, to, (int)sheets);
        }
        catch (RefusalException e)
        {
            Messages[""] = e.Message;
        }
    }

    private DateTimeOffset Hour(string field, string text)
    {
        if (TimeOnly.TryParseExact(text.Trim(), ["H:mm", "HH:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            var local = Date.ToDateTime(time);
            return new DateTimeOffset(local, clock.At(new DateTimeOffset(local, LocalDays.Begin(Date, clock).Offset)).Offset);
        }

        Messages[field] = Words.DayPlan.NoHour;
        return default;
    }

    private double Number(string field, string text, double min, double max, string what, string unit)
        => Messages.Try(field, () => NumberText.Read(text, min, max, what, unit));
}
