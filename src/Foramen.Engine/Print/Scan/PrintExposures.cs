namespace Foramen.Engine.Print;

/// <summary>The exposures that would give a print's densities, and those of its prediction, pixel by pixel.</summary>
internal sealed class PrintExposures(ScannedPrint print, DensityPlane predicted, LgExposureOfDensity curve, int rim, double right, double down)
{
    /// <summary>Columns.</summary>
    public int Width => predicted.Width;

    /// <summary>Rows.</summary>
    public int Height => predicted.Height;

    /// <summary>Pixels of rim on each side.</summary>
    public int Rim => rim;

    /// <summary>How far right the print lies, pixels.</summary>
    public double Right => right;

    /// <summary>How far down the print lies, pixels.</summary>
    public double Down => down;

    /// <summary>Of the prediction, lux seconds in rows; NaN where it is unknown.</summary>
    public float[] Predicted() => Exposures(Enumerable.Range(0, Height).SelectMany(row => predicted.Row(row).ToArray()));

    /// <summary>Of the print, at pixels of its own, lux seconds in rows.</summary>
    public float[] Seen() => Exposures(print.Densities());

    /// <summary>How much lighter the subject came out, stops; NaN where it cannot be told.</summary>
    public float[] StopsOff()
    {
        var off = new float[Width * Height];
        Array.Fill(off, float.NaN);
        for (var row = rim; row < Height - rim; row++)
        {
            for (var column = rim; column < Width - rim; column++)
            {
                var expected = predicted.At(column, row);
                if (!float.IsNaN(expected) && SeenDensity(column + right, row + down) is { } seen && !(Math.Max(seen, expected) < curve.Low) && !(Math.Min(seen, expected) > curve.High))
                {
                    off[(row * Width) + column] = (float)((curve.At(seen) - curve.At(expected)) / Math.Log10(2));
                }
            }
        }

        return off;
    }

    private float[] Exposures(IEnumerable<float> densities) => [.. densities.Select(density => float.IsNaN(density) ? float.NaN : (float)curve.ExposureAt(density))];

    // Straight between four pixels, within the rim of the real print.
    private double? SeenDensity(double x, double y)
    {
        var (column, row) = ((int)Math.Floor(x), (int)Math.Floor(y));
        if (column < rim || row < rim || column + 1 >= Width - rim || row + 1 >= Height - rim)
        {
            return null;
        }

        var (u, v) = (x - column, y - row);
        double At(int c, int r) => print.Reflectances[((row + r) * Width) + column + c];
        var reflectance = ((1 - v) * (((1 - u) * At(0, 0)) + (u * At(1, 0)))) + (v * (((1 - u) * At(0, 1)) + (u * At(1, 1))));
        return -Math.Log10(Math.Max(1e-4, reflectance));
    }
}
