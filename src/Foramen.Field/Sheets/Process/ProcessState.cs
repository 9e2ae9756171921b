using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Fold;

namespace Foramen.Field.Sheets.Process;

/// <summary>
/// The processing run of a sheet, worked out anew from the journal and the wall clock each time it is asked. What the next bath is set to stands
/// here until the sheet goes into it.
/// </summary>
public sealed class ProcessState
{
    private readonly SheetState sheet;

    /// <summary>Begins with what was usual.</summary>
    public ProcessState(SheetState sheet)
    {
        this.sheet = sheet;
        var usual = new UsualBaths(sheet.Session.Ledger);
        TemperatureCelsius = usual.TemperatureCelsius;
        AtTwentySeconds = usual.DevelopmentAtTwenty;
        StopOrRinse = usual.StopOrRinse;
        StopSeconds = usual.Seconds(StopOrRinse);
        FixAtTwentySeconds = usual.FixingAtTwenty;
        Bottle = usual.Bottle;
        WashChanges = Math.Clamp(Math.Round(usual.Seconds(BathKind.Wash) / BathCues.WashChangeSeconds), 1, 12);
    }

    /// <summary>The bottle of developer; null for one that the journal does not know.</summary>
    public Ulid? Bottle { get; set; }

    /// <summary>Bottles of developer in use, the newest first.</summary>
    public IReadOnlyList<Bottle> Bottles
        => [.. sheet.Session.Ledger.Bottles.All.Where(bottle => bottle is { InUse: true, Mixed.Body.Contents: BottleContents.Developer }).Reverse()];

    /// <summary>The bottle the sheet is in, or was.</summary>
    public DevelopingBottle? Developing => Run?.Started?.Body.Bottle is { } id ? new DevelopingBottle(sheet, id) : null;

    /// <summary>Temperature of the developer, 10 to 32 °C.</summary>
    public double TemperatureCelsius { get; set; }

    /// <summary>Development time at 20 °C, s.</summary>
    public double AtTwentySeconds { get; set; }

    /// <summary>What follows the developer.</summary>
    public BathKind StopOrRinse { get; set; }

    /// <summary>Time in the stop bath or rinse, s.</summary>
    public double StopSeconds { get; set; }

    /// <summary>Time in the fixer at 20 °C, s.</summary>
    public double FixAtTwentySeconds { get; set; }

    /// <summary>Time in the fixer as cold as the developer was said to be, s; no shorter where it is warmer than 20 °C.</summary>
    public double FixSeconds => Math.Round(FixAtTwentySeconds * UsualBaths.ColdFactor(BathCelsius));

    /// <summary>Temperature the baths are taken to have, °C: what was said of the developer.</summary>
    public double BathCelsius => Run?.Started?.Body.TemperatureCelsius ?? TemperatureCelsius;

    /// <summary>Changes of wash water.</summary>
    public double WashChanges { get; set; }

    /// <summary>The run; null before it begins.</summary>
    public BathRun? Run => sheet.Sheet?.Bath;

    /// <summary>Whether the sheet is in a bath.</summary>
    public bool IsRunning => sheet.Sheet is { } one && Running.BathIsOn(one);

    /// <summary>Whether the sheet has been through.</summary>
    public bool IsFinished => Run is { Finished: not null };

    /// <summary>Whether the hole has been opened and closed, so that there is something to develop.</summary>
    public bool IsExposed => sheet.Sheet is { HoleEvents.IsEmpty: false } one && !Running.HoleIsOpen(one);

    /// <summary>The bath it is in; null where it is in none.</summary>
    public BathKind? Bath => IsRunning ? Run!.Steps[^1].Body.Step : null;

    /// <summary>The bath after this one; null after the wash.</summary>
    public BathKind? Next => Bath switch
    {
        BathKind.Developer => StopOrRinse,
        BathKind.Rinse or BathKind.Stop => BathKind.Fix,
        BathKind.Fix => BathKind.Wash,
        _ => null,
    };

    /// <summary>The chosen bottle as it is now; null where none is chosen or it cannot be.</summary>
    public DeveloperAccount? Account => Bottle is { } id ? new DevelopingBottle(sheet, id).Account : null;

    /// <summary>
    /// Development in the chosen bottle as it is now, at this temperature, with its bounds and what to say of it; in a fresh one where none is chosen.
    /// Null where there is no time for it: then <see cref="NoTime"/> says why.
    /// </summary>
    public DevelopmentTime? Development
    {
        get
        {
            NoTime = null;
            try
            {
                var temperature = Temperature.FromCelsius(TemperatureCelsius);
                return Bottle is null
                    ? DevelopmentTime.Fresh(DeveloperProfile.Paper with { Time = Duration.FromSeconds(AtTwentySeconds) }, temperature)
                    : Account?.Now.TimeAt(temperature);
            }
            catch (RefusalException e)
            {
                NoTime = e.Message;
                return null;
            }
        }
    }

    /// <summary>Why there is no time; null where there is one.</summary>
    public string? NoTime { get; private set; }

    /// <summary>The other sheet that is in the chosen bottle now; null where it is free.</summary>
    public Sheet? InTheBottle => Bottle is { } id
        ? sheet.Session.Ledger.Sheets.All.FirstOrDefault(other => other.Id != sheet.Id && !other.Withdrawn && Running.BathIsOn(other)
            && other.Bath is { Started.Body.Bottle: { } theirs } run && theirs == id && run.Steps[^1].Body.Step == BathKind.Developer)
        : null;

    /// <summary>The fixer a sheet goes into: the newest bottle in use; null where there is none that can be reckoned with.</summary>
    public FixerAccount? Fixer => new UsualBaths(sheet.Session.Ledger).Fixer;

    /// <summary>How the bath stands; null where the sheet is in none.</summary>
    public StepTime? TimeAt(DateTimeOffset now) => sheet.Sheet is { } one ? StepTime.OfBath(one, now) : null;

    /// <summary>What the hand does now; null where the sheet is in no bath.</summary>
    public AgitationCue? CueAt(DateTimeOffset now)
        => TimeAt(now) is { } time ? BathCues.At(Bath!.Value, time.ElapsedSeconds, time.PlannedSeconds) : null;

    /// <summary>Writes that the sheet went into the developer; false where there is no time for it or another sheet is in the bottle.</summary>
    public async Task<bool> StartAsync() => InTheBottle is null && Development is { } development && await sheet.WriteAsync(
        new BathStarted { Sheet = sheet.Id, TemperatureCelsius = TemperatureCelsius, Bottle = Bottle },
        new BathStep { Sheet = sheet.Id, Step = BathKind.Developer, PlannedSeconds = Math.Round(development.Time.Middle.Seconds) });

    /// <summary>Writes that the sheet went on into the next bath, or that the wash is over; some time ago where that is said.</summary>
    public Task<bool> GoOnAsync(double secondsAgo = 0)
    {
        double? ago = secondsAgo > 0 ? secondsAgo : null;
        EntryBody onwards = Next is { } next
            ? new BathStep { Sheet = sheet.Id, Step = next, PlannedSeconds = PlannedSeconds(next), SecondsAgo = ago }
            : new BathFinished { Sheet = sheet.Id, SecondsAgo = ago };
        return (Bath, Developing, Fixer) switch
        {
            (BathKind.Developer, { } bottle, _) => sheet.WriteAsync(bottle.Developed(ago), onwards),
            (BathKind.Fix, _, { } fixer) => sheet.WriteAsync(new FixedIn { Sheet = sheet.Id, Bottle = fixer.Bottle.Id }, onwards),
            _ => sheet.WriteAsync(onwards),
        };
    }

    private double PlannedSeconds(BathKind bath) => bath switch
    {
        BathKind.Fix => FixSeconds,
        BathKind.Wash => WashChanges * BathCues.WashChangeSeconds,
        _ => StopSeconds,
    };
}
