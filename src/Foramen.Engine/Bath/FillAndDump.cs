using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// Washing by filling the tank, waiting and pouring out. With a liquid volume c kept in the sheet and on the walls and a filling W, each change
/// leaves 1 − η·W/(c + W) of what was there, where η is how near the change came to equilibrium. The number of changes counts far more than
/// the water used.
/// </summary>
public static class FillAndDump
{
    /// <summary>The part that is left after a number of changes.</summary>
    /// <param name="kept">c, kept in the sheet and on the walls after pouring out; 0.1 ml to 10 l.</param>
    /// <param name="filling">W, each filling; 1 ml to 100 l.</param>
    /// <param name="changes">0 to 1000.</param>
    /// <param name="equilibrium">η, 0.05 to 1; 1 is complete mixing with the sheet.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static double Left(Volume kept, Volume filling, int changes, double equilibrium = 1)
        => Math.Pow(LeftByOne(kept, filling, equilibrium), Guard.Within(changes, 0, 1000, "the number of changes"));

    /// <summary>The changes that bring the part that is left down to <paramref name="target"/>.</summary>
    /// <param name="target">1e-9 to 1.</param>
    /// <param name="kept">c.</param>
    /// <param name="filling">W.</param>
    /// <param name="equilibrium">η.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static int ChangesNeeded(double target, Volume kept, Volume filling, double equilibrium = 1)
    {
        var changes = ChangesInTheory(target, kept, filling, equilibrium);

        // Rounding in the logarithms must not ask for one change more.
        return (int)Math.Ceiling(changes - 1e-9);
    }

    /// <summary>The same before rounding up to whole changes.</summary>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static double ChangesInTheory(double target, Volume kept, Volume filling, double equilibrium = 1)
        => Math.Log(Guard.Within(target, 1e-9, 1, "the part that may be left")) / Math.Log(LeftByOne(kept, filling, equilibrium));

    private static double LeftByOne(Volume kept, Volume filling, double equilibrium)
    {
        var c = Guard.Within(kept.Millilitres, 0.1, 10_000, "what stays in the tank", "ml");
        var w = Guard.Within(filling.Millilitres, 1, 100_000, "the filling", "ml");
        return 1 - (Guard.Within(equilibrium, 0.05, 1, "how completely a change mixes") * w / (c + w));
    }
}
