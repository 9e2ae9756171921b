namespace Foramen.Engine.Print;

/// <summary>What is not known of a line, for want of better, is the mean of what is.</summary>
internal static class KnownMean
{
    /// <summary>Puts the mean of the numbers in place of what is no number; leaves a line without any number as it is.</summary>
    public static void Fill(Span<float> line)
    {
        var (sum, count) = (0.0, 0);
        foreach (var value in line)
        {
            (sum, count) = float.IsNaN(value) ? (sum, count) : (sum + value, count + 1);
        }

        if (count == line.Length || count == 0)
        {
            return;
        }

        var mean = (float)(sum / count);
        foreach (ref var value in line)
        {
            value = float.IsNaN(value) ? mean : value;
        }
    }
}
