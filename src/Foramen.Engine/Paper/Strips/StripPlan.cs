using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// A test strip to be made: patches whose times stand in a constant ratio, and the moves of the card that give exactly those times. One
/// patch more should stay masked from all light and one corner get far more than the last patch: they tell the limits of density. Immutable.
/// </summary>
/// <remarks>
/// Limit: time is not light. A strip made by time contains the paper's failure between its first and its last patch, and cannot by itself tell it
/// from speed and contrast (see <see cref="FailureEstimate"/>).
/// </remarks>
public sealed record StripPlan
{
    /// <summary>Standard deviation of the moment at which a hand moves a card or opens a hole (an assumption).</summary>
    public static Duration HandSpread { get; } = Duration.FromSeconds(0.15);

    /// <summary>Shortest stretch of light that a hand can give to a few per cent (an assumption).</summary>
    public static Duration LeastByHand { get; } = Duration.FromSeconds(2);

    /// <summary>Most patches that a strip can hold.</summary>
    public const int MostSteps = 24;

    private StripPlan(StripWay way, Stops ratio, IReadOnlyList<StripStep> steps, IReadOnlyList<StripMove> moves)
    {
        Way = way;
        Ratio = ratio;
        Steps = steps;
        Moves = moves;
    }

    /// <summary>How the card and the light are handled.</summary>
    public StripWay Way { get; }

    /// <summary>From one patch to the next.</summary>
    public Stops Ratio { get; }

    /// <summary>The patches, least exposed first.</summary>
    public IReadOnlyList<StripStep> Steps { get; }

    /// <summary>What to do, in order.</summary>
    public IReadOnlyList<StripMove> Moves { get; }

    /// <summary>The light of the patch that gets most, which is all the light there is.</summary>
    public Duration Longest => Steps[^1].Total;

    /// <summary>A strip whose times are in a constant ratio.</summary>
    /// <param name="first">Time of the least exposed patch, 0.5 s to an hour.</param>
    /// <param name="ratio">From patch to patch, a sixth of a stop to 3 stops.</param>
    /// <param name="count">Number of patches, 3 to 24.</param>
    /// <param name="way">How card and light are handled.</param>
    /// <param name="least">Shortest stretch of light that can be kept; <see cref="LeastByHand"/> where nothing is said.</param>
    /// <exception cref="RefusalException">A value is out of its range, a stretch is shorter than can be kept, or the whole takes more than a day.</exception>
    public static StripPlan Create(Duration first, Stops ratio, int count, StripWay way, Duration? least = null)
    {
        Guard.Within(first.Seconds, 0.5, 3600, "the time of the first patch", "s");
        Guard.Within(ratio.Value, 1.0 / 6, 3, "the step from patch to patch", "stops");
        Guard.Within(count, 3, MostSteps, "the number of patches");
        var totals = new double[count];
        for (var i = 0; i < count; i++)
        {
            totals[i] = first.Seconds * Math.Pow(2, ratio.Value * i);
        }

        Guard.Within(totals[^1], 0.5, 86_400, "the time of the last patch", "s");
        var stretches = new double[count];
        for (var i = 0; i < count; i++)
        {
            stretches[i] = i == 0 ? totals[0] : totals[i] - totals[i - 1];
        }

        RefuseShort(stretches, (least ?? LeastByHand).Seconds);
        return new StripPlan(way, ratio, StepsOf(totals, way), MovesOf(stretches, way));
    }

    private static void RefuseShort(double[] stretches, double least)
    {
        var shortest = stretches.Min();
        if (shortest < least)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"The shortest stretch of light would be {shortest:0.##} s, less than the {least:0.##} s that can be kept by hand; dim the light and make the first patch {least / shortest:0.#} times longer, or take larger steps."));
        }
    }

    private static StripStep[] StepsOf(double[] totals, StripWay way)
    {
        var steps = new StripStep[totals.Length];
        for (var i = 0; i < steps.Length; i++)
        {
            // A stretch has a beginning and an end; openings of the hole add up, a card under steady light makes two edges whatever the patch.
            var edges = way == StripWay.HoleAsShutter ? 2 * (i + 1) : 2;
            steps[i] = new StripStep(i + 1, Duration.FromSeconds(totals[i]), Duration.FromSeconds(HandSpread.Seconds * Math.Sqrt(edges)));
        }

        return steps;
    }

    private static StripMove[] MovesOf(double[] stretches, StripWay way)
    {
        // Covering, the least exposed patch is covered first. Uncovering, the most exposed one lies open first, and the last stretch is the first patch's.
        var count = stretches.Length;
        var moves = new StripMove[count];
        var from = 0.0;
        for (var i = 0; i < count; i++)
        {
            var stretch = stretches[way == StripWay.Uncovering ? count - 1 - i : i];
            int? card = i == count - 1 ? null : way == StripWay.Uncovering ? count - 1 - i : i + 1;
            moves[i] = new StripMove(Duration.FromSeconds(from), Duration.FromSeconds(stretch), card);
            from += stretch;
        }

        return moves;
    }
}
