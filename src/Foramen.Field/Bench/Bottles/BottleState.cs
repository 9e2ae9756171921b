using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Storage;
using Foramen.Field.Time;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Fold;

namespace Foramen.Field.Bench.Bottles;

/// <summary>
/// One bottle on the bench, worked out anew from the journal and the wall clock each time it is asked. What was typed stands here until it is
/// written down.
/// </summary>
public sealed class BottleState(JournalSession session, Clock clock, Ulid id, UnitSystem units)
{
    /// <summary>The bottle; null where the journal does not know its mixing.</summary>
    public Bottle? Bottle => session.Ledger.Bottles.Find(id) is { Mixed: not null } bottle ? bottle : null;

    /// <summary>Fresh developer to add, ml.</summary>
    public string Fresh { get; set; } = "";

    /// <summary>To pour away first, ml.</summary>
    public string Poured { get; set; } = "";

    /// <summary>Temperature in the user's scale.</summary>
    public string Temperature { get; set; } = "";

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>Why nothing was written; null where all was.</summary>
    public string? Refusal { get; private set; }

    /// <summary>The developer's account now; null for fixer, and where it cannot be: then <see cref="Broken"/> says why.</summary>
    public DeveloperAccount? Developer => Of(BottleContents.Developer, bottle => DeveloperAccount.Of(session.Ledger, bottle, clock.Now));

    /// <summary>The fixer's account now; null for developer.</summary>
    public FixerAccount? Fixer => Of(BottleContents.Fixer, bottle => FixerAccount.Of(session.Ledger, bottle));

    /// <summary>Why there is no account; null where there is one.</summary>
    public string? Broken { get; private set; }

    /// <summary>Fills in the volumes as advised, or a tenth of the bottle (common practice, no source).</summary>
    public void Suggest()
    {
        if (Developer is not { } account)
        {
            return;
        }

        var topUp = account.Advice().TopUp ?? TopUp.Part(account.Now, 0.1);
        (Fresh, Poured) = (NumberText.Show(topUp.Fresh.Millilitres, 1), NumberText.Show(topUp.Pour.Millilitres, 1));
        Temperature = WarmthText.Bare(account.Temperature.Celsius, units);
    }

    /// <summary>Writes a topping up, or a pouring away where nothing fresh is given; false where it cannot be, and then something says why.</summary>
    public async Task<bool> TopUpAsync()
    {
        Messages.Clear();
        var limit = Bottle?.Mixed?.Body is { } mixed ? mixed.CapacityMillilitres ?? mixed.VolumeMillilitres : 100_000;
        var fresh = Read(nameof(Fresh), Fresh, limit, "the fresh part");
        var poured = Read(nameof(Poured), Poured, limit, "what is poured away");
        if (Messages.Count > 0)
        {
            return false;
        }

        if (Developer is { } account)
        {
            try
            {
                account.Now.After([new PouredAway(Volume.FromMillilitres(poured)), new FreshAdded(Volume.FromMillilitres(fresh))]);
            }
            catch (RefusalException e)
            {
                Messages[nameof(Poured)] = e.Message;
                return false;
            }
        }

        return await WriteAsync(new BottleToppedUp { Bottle = id, PouredMillilitres = poured, FreshMillilitres = fresh });
    }

    /// <summary>Writes a temperature; false where it cannot be.</summary>
    public async Task<bool> ReadWarmthAsync()
    {
        Messages.Clear();
        var celsius = WarmthText.Read(Temperature, units, Messages, nameof(Temperature));
        return Messages.Count == 0 && await WriteAsync(new BottleWarmthRead { Bottle = id, TemperatureCelsius = celsius });
    }

    /// <summary>Writes that it stands in the open, or closed, from now on.</summary>
    public Task<bool> StandAsync(bool open) => WriteAsync(open ? new BottleOpened { Bottle = id } : new BottleClosed { Bottle = id });

    /// <summary>Writes that it was given up.</summary>
    public Task<bool> DiscardAsync() => WriteAsync(new BottleDiscarded { Bottle = id });

    private T? Of<T>(BottleContents contents, Func<Bottle, T> account)
        where T : class
    {
        if (Bottle is not { } bottle || bottle.Mixed!.Body.Contents != contents)
        {
            return null;
        }

        try
        {
            Broken = null;
            return account(bottle);
        }
        catch (RefusalException e)
        {
            Broken = e.Message;
            return null;
        }
    }

    private double Read(string field, string text, double max, string what)
        => Messages.Try(field, () => text.Trim().Length == 0 ? 0 : NumberText.Read(text, 0, max, what, "ml"));

    private async Task<bool> WriteAsync(EntryBody body)
    {
        try
        {
            await session.AppendAsync(body);
            Refusal = null;
            return true;
        }
        catch (Exception e) when (e is StoreRefusedException or RefusalException)
        {
            Refusal = e.Message;
            return false;
        }
    }
}
