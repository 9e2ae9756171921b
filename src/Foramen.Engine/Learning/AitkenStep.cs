namespace Foramen.Engine.Learning;

/// <summary>
/// A number that an iteration brings nearer to its end by about the same part at each step, as expectation-maximisation does: after three such steps it goes straight
/// to where they lead (Aitken's Δ², for this use Louis, J. R. Stat. Soc. B 44, 226, 1982). Where the steps do not shrink evenly it goes on step by step; the
/// end is the same.
/// </summary>
internal struct AitkenStep
{
    private const int StepsBetween = 3;

    // Steps that shrink faster need no help, and by slower ones the end lies too far to be guessed.
    private const double FastestPart = 0.1;
    private const double SlowestPart = 0.9;

    private double before;
    private int steps;

    /// <summary>Where to go on from.</summary>
    /// <param name="from">The number before the iteration's step.</param>
    /// <param name="to">The number after it.</param>
    public double Next(double from, double to)
    {
        var step = to - from;
        var part = before == 0 ? 0 : step / before;
        before = step;
        steps++;
        if (steps < StepsBetween || part is not (> FastestPart and < SlowestPart))
        {
            return to;
        }

        (before, steps) = (0, 0);
        return to + (step * part / (1 - part));
    }
}
