namespace Foramen.Engine.Print;

/// <summary>A region whose outermost fiftieth passes over into what is around, and what is sampled of it for its trace.</summary>
internal static class SoftEdge
{
    private const double Soft = 0.02;
    private const int Across = 32;

    /// <summary>How much of the motion there is at a place.</summary>
    public static double Part(double u, double v) => Math.Clamp(Math.Min(Math.Min(u, 1 - u), Math.Min(v, 1 - v)) / Soft, 0, 1);

    /// <summary>Lights at even places.</summary>
    public static float[] Samples(Func<double, double, float> light)
    {
        var samples = new float[Across * Across];
        for (var i = 0; i < samples.Length; i++)
        {
            samples[i] = light(((i % Across) + 0.5) / Across, ((i / Across) + 0.5) / Across);
        }

        return samples;
    }
}
