using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Field.Texts;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Fold;

namespace Foramen.Field.Bench.Bottles;

/// <summary>A bottle in use in three lines.</summary>
/// <param name="Id">The bottle.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Standing">How it stands, or why that is not known.</param>
/// <param name="Advice">What to do; null where nothing needs to be done.</param>
public sealed record BottleCard(Ulid Id, string Name, string Standing, string? Advice)
{
    /// <summary>All bottles in use, the newest first.</summary>
    public static IReadOnlyList<BottleCard> All(Ledger ledger, DateTimeOffset now)
        => [.. ledger.Bottles.All.Where(bottle => bottle.InUse).Reverse().Select(bottle => Of(ledger, bottle, now))];

    private static BottleCard Of(Ledger ledger, Bottle bottle, DateTimeOffset now)
    {
        var mixed = bottle.Mixed!.Body;
        try
        {
            if (mixed.Contents == BottleContents.Fixer)
            {
                var fixer = FixerAccount.Of(ledger, bottle);
                return new(bottle.Id, mixed.Name, Words.Bottles.About(fixer.SheetsLeft), fixer.SheetsLeft == 0 ? Words.Bottles.Spent : null);
            }

            var account = DeveloperAccount.Of(ledger, bottle, now);
            var advice = account.Advice();
            return new(
                bottle.Id,
                mixed.Name,
                Words.Bottles.Card(account.Now.Activity, advice.SheetsLeft!.Sheets, account.Now.Volume.Millilitres),
                advice.Action is BottleAction.Use or BottleAction.Extend ? null : Words.Bottles.Advice(advice.Action, advice.TopUp));
        }
        catch (RefusalException e)
        {
            return new(bottle.Id, mixed.Name, e.Message, null);
        }
    }
}
