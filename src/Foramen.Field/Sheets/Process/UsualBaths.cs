using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Fold;

namespace Foramen.Field.Sheets.Process;

/// <summary>
/// What each bath is set to at first: as the last time in this journal, else common practice (no source): development 75 s at 20 °C, stop bath
/// 20 s, fixer 4 min at 20 °C or the usual time of the kind in the bottle where that is longer, wash in four changes.
/// </summary>
public sealed class UsualBaths(Ledger ledger)
{
    /// <summary>Longest fixing time that can be set at 20 °C, s.</summary>
    public const double LongestFixingSeconds = 900;

    private const double UsualFixingSeconds = 240;

    /// <summary>Development at 20 °C where the journal knows none, s.</summary>
    public static double AssumedDevelopmentSeconds => DeveloperProfile.Paper.Time.Seconds;

    /// <summary>Temperature of the last developer, else 20 °C.</summary>
    public double TemperatureCelsius => LastTemperature is { } celsius ? Math.Clamp(celsius, DeveloperWarmth.RefusedBelowCelsius, DeveloperWarmth.RefusedAboveCelsius) : 20;

    /// <summary>Development time at 20 °C, s: the last one brought back to 20 °C, to the nearest 5 s.</summary>
    public double DevelopmentAtTwenty
    {
        get
        {
            if (LastDevelopment is not { } last)
            {
                return AssumedDevelopmentSeconds;
            }

            var factor = last.Celsius is >= DeveloperWarmth.RefusedBelowCelsius and <= DeveloperWarmth.RefusedAboveCelsius
                ? DevelopmentTime.Fresh(DeveloperProfile.Paper, Temperature.FromCelsius(last.Celsius.Value)).Time.Middle.Seconds / AssumedDevelopmentSeconds
                : 1;
            return Math.Clamp(Math.Round(last.Seconds / factor / 5) * 5, 30, 300);
        }
    }

    /// <summary>The bottle of developer that was used last, else the newest; null where none is in use.</summary>
    public Ulid? Bottle
    {
        get
        {
            var inUse = ledger.Bottles.All.Where(bottle => bottle is { InUse: true, Mixed.Body.Contents: BottleContents.Developer }).ToList();
            return inUse.Where(bottle => bottle.Happenings.Any(happening => happening.Said is DevelopedIn))
                .MaxBy(bottle => bottle.Happenings.Last(happening => happening.Said is DevelopedIn).Order)?.Id
                ?? inUse.LastOrDefault()?.Id;
        }
    }

    /// <summary>Whether a stop bath or a rinse follows the developer.</summary>
    public BathKind StopOrRinse => Steps.LastOrDefault(step => step.Body.Step is BathKind.Stop or BathKind.Rinse)?.Body.Step ?? BathKind.Stop;

    /// <summary>
    /// Fixing time at 20 °C, s: the last one brought back to 20 °C, to the nearest 30 s; never less than is usual for the kind of fixer in the bottle in use.
    /// </summary>
    public double FixingAtTwenty
    {
        get
        {
            var last = ledger.Sheets.All
                .SelectMany(sheet => sheet.Baths)
                .SelectMany(run => run.Steps.Where(step => step.Body.Step == BathKind.Fix).Select(step => (step, run.Started?.Body.TemperatureCelsius)))
                .OrderBy(pair => pair.step.Order)
                .Select(pair => (double?)(pair.step.Body.PlannedSeconds / ColdFactor(pair.TemperatureCelsius)))
                .LastOrDefault();
            var atTwenty = last is { } seconds ? Math.Clamp(Math.Round(seconds / 30) * 30, 30, LongestFixingSeconds) : UsualFixingSeconds;
            return Math.Max(atTwenty, Fixer?.Time.Seconds ?? 0);
        }
    }

    /// <summary>The newest bottle of fixer in use; null where there is none, or none that can be reckoned with: then the bottle's own page says why.</summary>
    public FixerAccount? Fixer
    {
        get
        {
            if (ledger.Bottles.All.LastOrDefault(bottle => bottle is { InUse: true, Mixed.Body.Contents: BottleContents.Fixer }) is not { } newest)
            {
                return null;
            }

            try
            {
                return FixerAccount.Of(ledger, newest);
            }
            catch (RefusalException)
            {
                return null;
            }
        }
    }

    /// <summary>How much longer fixing takes at a temperature than at 20 °C; one where it is not known or warmer.</summary>
    public static double ColdFactor(double? celsius)
        => celsius is >= DeveloperWarmth.RefusedBelowCelsius and <= DeveloperWarmth.RefusedAboveCelsius
            ? FixingTime.At(Duration.FromSeconds(1), Temperature.FromCelsius(celsius.Value)).Seconds
            : 1;

    private IEnumerable<Stamped<BathStep>> Steps => ledger.Sheets.All.SelectMany(sheet => sheet.Baths).SelectMany(run => run.Steps).OrderBy(step => step.Order);

    private double? LastTemperature => ledger.Sheets.All
        .SelectMany(sheet => sheet.Baths)
        .Where(run => run.Started is { Body.TemperatureCelsius: not null })
        .MaxBy(run => run.Started!.Order)?.Started!.Body.TemperatureCelsius;

    // In a known bottle the time was the bottle's, not a fresh one's.
    private (double Seconds, double? Celsius)? LastDevelopment => ledger.Sheets.All
        .SelectMany(sheet => sheet.Baths)
        .Where(run => run.Started?.Body.Bottle is null)
        .SelectMany(run => run.Steps.Where(step => step.Body.Step == BathKind.Developer).Select(step => (step, run.Started?.Body.TemperatureCelsius)))
        .OrderBy(pair => pair.step.Order)
        .Select(pair => ((double, double?)?)(pair.step.Body.PlannedSeconds, pair.TemperatureCelsius))
        .LastOrDefault();

    /// <summary>Planned time of the stop bath, the rinse or the wash, s.</summary>
    public double Seconds(BathKind bath) => Steps.LastOrDefault(step => step.Body.Step == bath)?.Body.PlannedSeconds ?? bath switch
    {
        BathKind.Wash => 4 * BathCues.WashChangeSeconds,
        _ => 20,
    };
}
