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
    public RingAverage(int samples) => (this.samples, sums) = (samples, new double[(3 * samples) + 3]);

    /// <summary>The mean.</summary>
    /// <param name="ring">One turn of samples.</param>
    /// <param name="shifts">Spells: content carried forward by so many samples at the beginning and at the end, and the spell's weight; weights sum to 1.</param>
    /// <param name="into">One turn of means.</param>
    public void Read(ReadOnlySpan<float> ring, IReadOnlyList<RingShift> shifts, Span<float> into)
    {
        for (var i = 0; i < sums.Length - 1; i++)
        {
            sums[i + 1] = sums[i] + ring[i % samples];
        }

        into.Clear();
        foreach (var shift in shifts)
        {
            Add(shift, into);
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
        var whole = turns * sums[samples];
        var (first, firstPart) = Place(begin);
        var (last, lastPart) = Place(begin + rest);
        var scale = shift.Weight / length;
        for (var i = 0; i < into.Length; i++)
        {
            var low = sums[first + i] + (firstPart * (sums[first + i + 1] - sums[first + i]));
            var high = sums[last + i] + (lastPart * (sums[last + i + 1] - sums[last + i]));
            into[i] += (float)(scale * (whole + high - low));
        }
    }

    private static (int Index, double Part) Place(double at) => ((int)at, at - (int)at);
}
