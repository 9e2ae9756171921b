using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;

namespace Foramen.Journal.Bottles;

/// <summary>What all bottles of one kind of developer say of it. Bottles are of one kind where the same was written down of their developer.</summary>
public static class DeveloperLessons
{
    /// <summary>What was learned of the developer in a bottle; nothing while no first tone was seen in any of its kind.</summary>
    /// <param name="ledger">All that the journal says.</param>
    /// <param name="own">The bottle; it was mixed.</param>
    /// <exception cref="RefusalException">A value outside its range.</exception>
    public static LearnedDeveloper Of(Ledger ledger, Bottle own)
    {
        var said = own.Mixed!.Body.Developer;
        var profile = said.ToProfile();
        var lives = new List<DeveloperLife>();
        foreach (var bottle in ledger.Bottles.All)
        {
            if (bottle.Mixed?.Body is { Contents: BottleContents.Developer } mixed
                && Equals(mixed.Developer, said)
                && bottle.Happenings.Any(happening => happening.Said is DevelopedIn { AppearedAfterSeconds: not null }))
            {
                try
                {
                    lives.Add(DeveloperAccount.LifeOf(ledger, bottle, profile));
                }
                catch (RefusalException)
                {
                    // A bottle that cannot have been mixed teaches nothing; its own page says what is wrong with it.
                }
            }
        }

        return DeveloperFit.For(profile, lives, own.Id.ToString());
    }
}
