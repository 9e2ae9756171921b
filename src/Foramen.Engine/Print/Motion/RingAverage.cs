namespace Foramen.Engine.Print;

/// <summary>
/// What the points of a closed line see on average while its content is carried along it: the mean of a periodic row of samples over spells, each from one shift to
/// another. Exact for samples that are even over their own width.
/// </summary>
internal sealed class RingAverage
{
    private readonly int samples;
    private readonly double[] sums;

    /// <summary>For rings of so many samples.</summary>
    public RingAverage(int samples) => (this.samples, sums) = (samples, new double[(3 * samples) + 2]);

    /// <summary>The mean.</summary>
    /// <param name="ring">One turn of samples.</param>
    /// <param name="shifts">Spells: content carried forward by so many samples at the beginning and at the end, and the spell's weight; weights sum to 1.</param>
    /// <param name="into">One turn of means.</param>
    public void Read(ReadOnlySpan<float> ring, IReadOnlyList<RingShift> shifts, Span<float> into)
    {
        var sum = 0.0;
        var at = 0;
        for (var turn = 0; turn < 3; turn++)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                sums[at++] = sum;
                sum += ring[i];
            }
        }

        (sums[at], sums[at + 1]) = (sum, sum + ring[0]);
        into.Clear();
        for (var i = 0; i < shifts.Count; i++)
        {
            Add(shifts[i], into);
        }
    }

    private void Add(RingShift shift, Span<float> into)
    {
        // A standing content is read over one sample's width, which is straight interpolation.
        var (near, far) = (Math.Min(shift.From, shift.To), Math.Max(shift.From, shift.To));
        var widen = Math.Max(0, 1 - (far - near)) / 2;
        (near, far) = (near - widen, far + widen);
        var length = far - near;
        var turns = Math.Floor(length / samples);
        var rest = length - (turns * samples);
        var begin = 0.5 - far;
        begin -= Math.Floor(begin / samples) * samples;
        var (first, last) = ((int)begin, (int)(begin + rest));
        var (firstPart, lastPart) = (begin - first, begin + rest - last);
        var scale = shift.Weight / length;
        var whole = turns * sums[samples];
        var low = sums.AsSpan(first, into.Length + 1);
        var high = sums.AsSpan(last, into.Length + 1);
        for (var i = 0; i < into.Length; i++)
        {
            var from = low[i] + (firstPart * (low[i + 1] - low[i]));
            var to = high[i] + (lastPart * (high[i + 1] - high[i]));
            into[i] += (float)(scale * (whole + to - from));
        }
    }
}
