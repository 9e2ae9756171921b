using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>
/// A measured table of metered time against time needed, joined by straight lines in lg t. Below one second there is no failure unless the
/// table says so for one second; beyond the last row the last slope goes on, which is a guess and is said so.
/// </summary>
public sealed record MeasuredFailure : FailureLaw
{
    private readonly double[] lgMetered;
    private readonly double[] lgNeeded;

    private MeasuredFailure(double[] lgMetered, double[] lgNeeded)
    {
        this.lgMetered = lgMetered;
        this.lgNeeded = lgNeeded;
    }

    /// <summary>The longest time needed in the table; beyond it the law is a guess.</summary>
    public Duration LongestMeasured => Duration.FromSeconds(Math.Pow(10, lgNeeded[^1]));

    /// <summary>A law from rows of metered time and time needed, in rising order.</summary>
    /// <exception cref="RefusalException">No rows, rows out of order, or a row that needs less than its metered time.</exception>
    public static MeasuredFailure FromTable(IReadOnlyList<(Duration Metered, Duration Needed)> rows)
    {
        if (rows.Count == 0)
        {
            throw new RefusalException("The failure table is empty; give at least one row of metered time and time needed.");
        }

        // One second needs one second: the table's reference, as for every other law.
        var metered = new List<double> { 0 };
        var needed = new List<double> { 0 };
        for (var i = 0; i < rows.Count; i++)
        {
            var (m, n) = (rows[i].Metered.Seconds, rows[i].Needed.Seconds);
            if (m < 1 || n < m)
            {
                throw new RefusalException(FormattableString.Invariant(
                    $"Row {i + 1} of the failure table says {m:0.##} s needs {n:0.##} s; metered times start at 1 s and need at least as long."));
            }

            if (i == 0 && m == 1)
            {
                needed[0] = Math.Log10(n);
                continue;
            }

            if (Math.Log10(m) <= metered[^1] || Math.Log10(n) <= needed[^1])
            {
                throw new RefusalException($"Row {i + 1} of the failure table is out of order; both times should rise from row to row.");
            }

            metered.Add(Math.Log10(m));
            needed.Add(Math.Log10(n));
        }

        if (metered.Count < 2)
        {
            throw new RefusalException("The failure table says nothing beyond one second; add a row of a longer time.");
        }

        return new MeasuredFailure([.. metered], [.. needed]);
    }

    /// <inheritdoc/>
    public override string Describe() => FormattableString.Invariant(
        $"Measured table up to {LongestMeasured.Seconds:0} s; beyond that its last slope goes on, which is a guess.");

    /// <inheritdoc/>
    public override double SecondsNeeded(double meteredSeconds) => Along(meteredSeconds, lgMetered, lgNeeded);

    /// <inheritdoc/>
    public override double MeteredSecondsFor(double actualSeconds) => Along(actualSeconds, lgNeeded, lgMetered);

    /// <inheritdoc/>
    public bool Equals(MeasuredFailure? other)
        => other is not null && lgMetered.AsSpan().SequenceEqual(other.lgMetered) && lgNeeded.AsSpan().SequenceEqual(other.lgNeeded);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(lgMetered.Length, lgMetered[^1], lgNeeded[^1]);

    private static double Along(double seconds, double[] from, double[] to)
    {
        if (seconds <= 0)
        {
            return 0;
        }

        var x = Math.Log10(seconds);
        if (x <= from[0])
        {
            // Below the first row the ratio of the first row holds: rising, continuous, and exact at the row.
            return seconds * Math.Pow(10, to[0] - from[0]);
        }

        var i = 1;
        while (i < from.Length - 1 && x > from[i])
        {
            i++;
        }

        var slope = (to[i] - to[i - 1]) / (from[i] - from[i - 1]);
        return Math.Pow(10, to[i - 1] + (slope * (x - from[i - 1])));
    }
}
