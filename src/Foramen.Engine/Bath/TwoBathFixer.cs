using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// Two fixers, one after the other: half the time in each. The second sees little silver, so prints last though the first is used far.
/// When the first is spent, the second takes its place and a fresh one is mixed (US Navy NAVEDTRA 14209; A. Miethe 1894 in Clerc, sec. 406).
/// </summary>
/// <param name="First">The first bath.</param>
/// <param name="Second">The second bath.</param>
public sealed record TwoBathFixer(FixerBath First, FixerBath Second)
{
    /// <summary>Two fresh baths.</summary>
    /// <exception cref="RefusalException">Outside 10 ml to 100 l.</exception>
    public static TwoBathFixer Fill(Volume each)
        => new(FixerBath.Fill(each, FixerLimits.FirstBath), FixerBath.Fill(each, FixerLimits.SecondBath));

    /// <summary>Whether it is time to move the second up.</summary>
    public bool IsSpent => First.IsSpent || Second.IsSpent;

    /// <summary>After a sheet that gave up its silver in the first bath and carried some of it over.</summary>
    /// <param name="area">Of the sheet.</param>
    /// <param name="silverGrams">Silver it gives up.</param>
    /// <param name="carried">Liquid it takes from the first bath to the second.</param>
    /// <exception cref="RefusalException">Outside the ranges of <see cref="FixerBath"/>.</exception>
    public TwoBathFixer AfterSheet(Area area, double silverGrams, Volume carried)
    {
        var first = First.AfterSheet(area, silverGrams);
        return new(first, Second.AfterCarryOver(carried, first.SilverGramsPerLitre));
    }

    /// <summary>The second bath takes the first one's place; a fresh one of the same volume follows.</summary>
    public TwoBathFixer MovedUp()
        => new(Second with { Limits = FixerLimits.FirstBath }, FixerBath.Fill(Second.Volume, FixerLimits.SecondBath));
}
