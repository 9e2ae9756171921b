using System.Text.Json;
using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Fold;

namespace Foramen.Field.Sheets.Process;

/// <summary>The bottle that a sheet is developed in, as the journal knows it at the moment it is asked.</summary>
public sealed class DevelopingBottle(SheetState sheet, Ulid id)
{
    /// <summary>The bottle; null where the journal does not know its mixing.</summary>
    public Bottle? Bottle => sheet.Session.Ledger.Bottles.Find(id) is { Mixed: not null } bottle ? bottle : null;

    /// <summary>Its account now; null where it cannot be.</summary>
    public DeveloperAccount? Account
    {
        get
        {
            try
            {
                return Bottle is { } bottle ? DeveloperAccount.Of(sheet.Session.Ledger, bottle, sheet.Clock.Now) : null;
            }
            catch (RefusalException)
            {
                // The bottle's own page says what is wrong with it.
                return null;
            }
        }
    }

    /// <summary>What was said of the sheet in this bottle; null before.</summary>
    public DevelopedIn? Said => sheet.Sheet?.Developed is { Body: var said } && said.Bottle == id ? said : null;

    /// <summary>Whether the first tone has been seen.</summary>
    public bool HasAppeared => Said?.AppearedAfterSeconds is not null;

    /// <summary>Development by the first tone: its time times the developer's factor, s; null before it was seen.</summary>
    public double? SecondsByFirstTone => Said?.AppearedAfterSeconds is { } appeared && Account is { } account
        ? Math.Round(FactorialDevelopment.Time(Duration.FromSeconds(appeared), account.Now.Profile.AppearanceFactor, DevelopingVessel.Tray).Seconds)
        : null;

    /// <summary>Whether something was poured or added since the sheet went through.</summary>
    public bool IsToppedUp => sheet.Sheet?.Developed is { } developed
        && Bottle is { } bottle && bottle.Happenings.Any(happening => happening.Said is BottleToppedUp && happening.Order > developed.Order);

    /// <summary>What to pour and add after this sheet: as advised, else a tenth of the bottle (common practice, no source); null where it is done.</summary>
    public TopUp? TopUpDue => Bottle is { InUse: true } && Said is not null && !IsToppedUp && Account is { } account
        ? account.Advice().TopUp ?? TopUp.Part(account.Now, 0.1)
        : null;

    private BathRun? Run => sheet.Sheet?.Bath;

    private double Celsius => Run?.Started?.Body.TemperatureCelsius ?? 20;

    /// <summary>That the sheet has been in it up to now, or up to some time ago.</summary>
    public DevelopedIn Developed(double? secondsAgo) => (Said ?? Beginning) with
    {
        DevelopedSeconds = Math.Max(0, Math.Round((Run?.SecondsIn(0, sheet.Clock.Now) ?? 0) - (secondsAgo ?? 0), 1)),
        SecondsAgo = secondsAgo,
    };

    /// <summary>Writes that the first tone is seen now.</summary>
    public Task<bool> AppearedAsync()
    {
        var seconds = Math.Round(Run?.SecondsIn(0, sheet.Clock.Now) ?? 0, 1);
        return seconds is >= 0.5 and <= 600
            ? sheet.WriteAsync((Said ?? Beginning) with { AppearedAfterSeconds = seconds })
            : Task.FromResult(false);
    }

    /// <summary>Writes that the developer's time is the one by the first tone.</summary>
    public Task<bool> GoByFirstToneAsync()
    {
        if (SecondsByFirstTone is not { } seconds || Run?.Steps is not [.., { Body.Step: BathKind.Developer } step])
        {
            return Task.FromResult(false);
        }

        var body = step.Body with { PlannedSeconds = seconds };
        return sheet.WriteAsync(new EntryAmended
        {
            Entry = step.Order.Id, Body = JsonDocument.Parse(BodyJson.Write(body)).RootElement, Why = "By the first tone.",
        });
    }

    /// <summary>Writes what was lost, the colour, and the topping up: all or nothing.</summary>
    public Task<bool> TopUpAsync(double lostMillilitres, DeveloperColour? colour, TopUp topUp)
    {
        var toppedUp = new BottleToppedUp { Bottle = id, PouredMillilitres = topUp.Pour.Millilitres, FreshMillilitres = topUp.Fresh.Millilitres };
        if (sheet.Sheet?.Developed is not { } developed || Said is not { } said)
        {
            return sheet.WriteAsync(toppedUp);
        }

        var ago = (sheet.Clock.Now - developed.At).TotalSeconds + (said.SecondsAgo ?? 0);
        return sheet.WriteAsync(
            said with { LostMillilitres = lostMillilitres, Colour = colour ?? said.Colour, SecondsAgo = Math.Clamp(ago, 0, 86_400) }, toppedUp);
    }

    private DevelopedIn Beginning => new() { Sheet = sheet.Id, Bottle = id, TemperatureCelsius = Celsius };
}
