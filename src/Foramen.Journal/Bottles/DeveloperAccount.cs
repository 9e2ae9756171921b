using System.Globalization;
using Foramen.Engine.Bath;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;

namespace Foramen.Journal.Bottles;

/// <summary>
/// A bottle of developer at an instant, worked out from the journal: between what happened it aged, in the open or closed, at the temperature last
/// read. Time that runs backwards counts as nothing. What cannot have happened is left out and said in <see cref="Remarks"/>. Immutable.
/// </summary>
public sealed record DeveloperAccount
{
    /// <summary>What covers a sheet where nobody has said, ml (common practice, no source: a small tank for one sheet).</summary>
    public const double AssumedCoveringMillilitres = 150;

    /// <summary>Lost at a transfer where nobody has said, ml (common practice, no source: a millilitre or two).</summary>
    public const double AssumedLostMillilitres = 1.5;

    private const double UsualTopUpPart = 0.1;

    private DeveloperAccount()
    {
    }

    /// <summary>The bottle as written down.</summary>
    public required Bottle Bottle { get; init; }

    /// <summary>The instant.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The bottle at that instant.</summary>
    public required DeveloperBottle Now { get; init; }

    /// <summary>Temperature last read; 20 °C where none was.</summary>
    public required Temperature Temperature { get; init; }

    /// <summary>When the temperature was last read; null where it never was.</summary>
    public required DateTimeOffset? TemperatureAt { get; init; }

    /// <summary>Whether it stands in the open.</summary>
    public required bool IsOpen { get; init; }

    /// <summary>Colour last noted; null where none was.</summary>
    public required DeveloperColour? Colour { get; init; }

    /// <summary>What happened, in order; without what cannot have happened.</summary>
    public required IReadOnlyList<DeveloperStep> Steps { get; init; }

    /// <summary>Sentences for the user: what was left out, assumed or odd.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>What the first tones seen in this kind of developer say of it; everything assumed while there are none.</summary>
    public required LearnedDeveloper Learned { get; init; }

    /// <summary>Whether <see cref="At"/> stands before the last thing that happened, by the clock that wrote it.</summary>
    public required bool IsBeforeTheLast { get; init; }

    /// <summary>
    /// Why its age is not to be trusted: the clock went back in its life, or shows an instant before the last thing that happened to it. One sentence,
    /// also the first of <see cref="Remarks"/>; null where neither by a minute.
    /// </summary>
    public string? ClockDoubt { get; init; }

    /// <summary>
    /// What one sheet means to it: the average of its own sheets; before the first a sheet like the one given, a tenth of the bottle topped up after it
    /// (common practice, no source).
    /// </summary>
    public required BottleHabit Habit { get; init; }

    /// <summary>What to do before the next sheet.</summary>
    public BottleAdvice Advice() => BottleAdvice.For(Now, Habit);

    /// <summary>The account of a bottle.</summary>
    /// <param name="ledger">All that the journal says.</param>
    /// <param name="bottle">One of its bottles.</param>
    /// <param name="at">The instant.</param>
    /// <exception cref="RefusalException">No bottle of developer, or mixed in a way that cannot be.</exception>
    public static DeveloperAccount Of(Ledger ledger, Bottle bottle, DateTimeOffset at)
    {
        if (bottle.Mixed is not { Body: { Contents: BottleContents.Developer } mixed } mixing)
        {
            throw new RefusalException("This is no bottle of developer whose mixing the journal knows; choose one that was mixed.");
        }

        var learned = DeveloperLessons.Of(ledger, bottle);
        var course = Lived(ledger, bottle, learned.Profile);
        var before = at < course.Clock;
        var doubt = course.ClockDoubtAt(at);
        course.Pass(at, remark: false);
        return new DeveloperAccount
        {
            Bottle = bottle,
            At = at,
            Now = course.Bottle,
            Temperature = course.Temperature,
            TemperatureAt = course.TemperatureAt,
            IsOpen = course.IsOpen,
            Colour = course.Colour,
            Steps = course.Steps,
            Remarks = doubt is null ? course.AllRemarks : [doubt, .. course.AllRemarks],
            ClockDoubt = doubt,
            Learned = learned,
            IsBeforeTheLast = before,
            Habit = BottleHabit.Of(course.Bottle) ?? new BottleHabit(
                UsualArea(ledger),
                course.Bottle.Profile.ReferenceDensity,
                Volume.FromMillilitres(AssumedLostMillilitres),
                Volume.FromMillilitres(UsualTopUpPart * course.Bottle.Capacity.Millilitres)),
        };
    }

    /// <summary>The life of a bottle as evidence of its developer.</summary>
    /// <exception cref="RefusalException">Mixed in a way that cannot be.</exception>
    internal static DeveloperLife LifeOf(Ledger ledger, Bottle bottle, DeveloperProfile profile)
    {
        var course = Lived(ledger, bottle, profile);
        return new DeveloperLife(bottle.Id.ToString(), course.Bottle.Filled, course.Events);
    }

    private static Course Lived(Ledger ledger, Bottle bottle, DeveloperProfile profile)
    {
        var (at, mixed) = (bottle.Mixed!.At, bottle.Mixed.Body);
        var course = new Course(ledger, mixed, profile, at.AddSeconds(-(mixed.SecondsAgo ?? 0)));
        foreach (var happening in bottle.Happenings)
        {
            course.Take(happening);
        }

        return course;
    }

    private static Area UsualArea(Ledger ledger) => ledger.Cameras.All.FirstOrDefault() is { Current.Body: var camera }
        ? Area.FromSides(Length.FromMillimetres(camera.SheetWidthMillimetres), Length.FromMillimetres(camera.SheetHeightMillimetres))
        : SheetLoads.AssumedArea;

    /// <summary>The fold over the happenings; lives only while an account is made.</summary>
    private sealed class Course
    {
        private readonly Ledger ledger;
        private readonly SheetLoads loads;
        private readonly List<string> remarks = [];
        private DateTimeOffset lived;
        private TimeSpan clockWentBack;
        private int sizesAssumed;

        public Course(Ledger ledger, BottleMixed mixed, DeveloperProfile profile, DateTimeOffset at)
        {
            this.ledger = ledger;
            loads = new SheetLoads(ledger, profile.ReferenceDensity);
            Bottle = DeveloperBottle.Fill(
                profile,
                Volume.FromMillilitres(mixed.VolumeMillilitres),
                Volume.FromMillilitres(mixed.CoveringMillilitres ?? AssumedCoveringMillilitres),
                mixed.CapacityMillilitres is { } capacity ? Volume.FromMillilitres(capacity) : null);
            (Clock, lived) = (at, at);
            if (mixed.TemperatureCelsius is { } celsius)
            {
                ReadWarmth(celsius, at);
            }
        }

        public DeveloperBottle Bottle { get; private set; }

        public DateTimeOffset Clock { get; private set; }

        public Temperature Temperature { get; private set; } = Temperature.FromCelsius(20);

        public DateTimeOffset? TemperatureAt { get; private set; }

        public bool IsOpen { get; private set; }

        public DeveloperColour? Colour { get; private set; }

        public List<DeveloperStep> Steps { get; } = [];

        /// <summary>What happened, as the Engine counts it.</summary>
        public List<BottleEvent> Events { get; } = [];

        public IReadOnlyList<string> AllRemarks =>
        [
            .. remarks,
            .. sizesAssumed > 0 ? [Text($"The size of {sizesAssumed} of its sheets is not known; 102 × 127 mm is taken for granted.")] : Array.Empty<string>(),
        ];

        public void Take(BottleHappening happening)
        {
            if (happening.At < Clock)
            {
                clockWentBack += Clock - happening.At;
            }

            Pass(happening.HappenedAt, remark: happening.At < Clock);
            Clock = happening.At;
            var before = Bottle;
            SheetLoad? load = null;
            try
            {
                switch (happening.Said)
                {
                    case DevelopedIn sheet:
                        load = loads.Of(ledger.Sheets.Find(sheet.Sheet), sheet.MeanDensity);
                        TakeSheet(sheet, load);
                        break;
                    case BottleToppedUp said:
                        Happen(
                            new PouredAway(Volume.FromMillilitres(said.PouredMillilitres)),
                            new FreshAdded(Volume.FromMillilitres(said.FreshMillilitres), said.Strength ?? 1));
                        break;
                    case BottleWarmthRead said:
                        ReadWarmth(said.TemperatureCelsius, happening.HappenedAt);
                        break;
                    case BottleOpened:
                        IsOpen = true;
                        break;
                    case BottleClosed:
                        IsOpen = false;
                        break;
                    default:
                        return;
                }

                Steps.Add(new DeveloperStep(happening, before, Bottle, load));
            }
            catch (RefusalException e)
            {
                remarks.Add(Text($"Left out, because it cannot have happened ({happening.At:yyyy-MM-dd HH:mm}): {e.Message}"));
            }
        }

        /// <summary>Why the age is not to be trusted at an instant; null where it is.</summary>
        public string? ClockDoubtAt(DateTimeOffset at)
        {
            // Two devices differ by seconds, and no developer ages by them.
            if (Clock - at >= TimeSpan.FromMinutes(1))
            {
                return $"The clock shows {Span(Clock - at)} before the last thing written down of this bottle, so it does not age until then: set the clock right, or go by the first tone.";
            }

            return clockWentBack >= TimeSpan.FromMinutes(1)
                ? $"The clock went back by {Span(clockWentBack)} or more while this bottle was in use, so how old it is is not certain: go by the first tone."
                : null;
        }

        public void Pass(DateTimeOffset until, bool remark)
        {
            if (until > lived)
            {
                var seconds = Math.Min((until - lived).TotalSeconds, Duration.Max);
                Happen(new TimePassed(Duration.FromSeconds(seconds), IsOpen, Temperature));
            }

            // After a clock was set back time goes on from where the clock stands now.
            lived = remark || until > lived ? until : lived;
        }

        private void TakeSheet(DevelopedIn sheet, SheetLoad load)
        {
            var temperature = Temperature.FromCelsius(sheet.TemperatureCelsius);
            var developed = new SheetDeveloped(load.Area, load.MeanDensity, Volume.FromMillilitres(sheet.LostMillilitres ?? AssumedLostMillilitres));
            if (sheet.AppearedAfterSeconds is { } appeared)
            {
                Happen(new ImageAppeared(Duration.FromSeconds(appeared), temperature), developed);
            }
            else
            {
                Happen(developed);
            }

            ReadWarmth(sheet.TemperatureCelsius, null);
            Colour = sheet.Colour ?? Colour;
            sizesAssumed += load.SizeIsKnown ? 0 : 1;
        }

        // All of it or, where a part cannot have happened, nothing.
        private void Happen(params BottleEvent[] happened)
        {
            Bottle = Bottle.After(happened);
            Events.AddRange(happened);
        }

        private void ReadWarmth(double celsius, DateTimeOffset? at)
        {
            Temperature = Temperature.FromCelsius(celsius);
            TemperatureAt = at ?? lived;
        }

        private static string Span(TimeSpan span) => span switch
        {
            { TotalHours: < 1.5 } => Text($"{span.TotalMinutes:0} min"),
            { TotalDays: < 2 } => Text($"{span.TotalHours:0.#} h"),
            _ => Text($"{span.TotalDays:0.#} days"),
        };

        private static string Text(FormattableString sentence) => sentence.ToString(CultureInfo.InvariantCulture);
    }
}
