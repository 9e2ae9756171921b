using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>Light of an even patch on a scan: the mean of the middle three fifths of its pixels by brightness, so that dust and scratches do not count.</summary>
/// <param name="Mean">Linear light, 0 to 1.</param>
/// <param name="ClippedLight">Part of the pixels at the highest code.</param>
/// <param name="ClippedDark">Part of the pixels at the lowest code.</param>
public readonly record struct PatchLight(double Mean, double ClippedLight, double ClippedDark)
{
    private const int Side = 40;
    private const double Trimmed = 0.2;

    /// <summary>The light of an area.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="map">From places to pixels.</param>
    /// <param name="area">The area.</param>
    /// <exception cref="RefusalException">It reaches beyond the scan.</exception>
    public static PatchLight Of(ScanImage scan, Homography map, PatchArea area)
    {
        var values = new float[Side * Side];
        var (light, dark) = (0, 0);
        for (var i = 0; i < Side; i++)
        {
            for (var j = 0; j < Side; j++)
            {
                var (x, y) = map.Map(
                    area.Left + ((area.Right - area.Left) * (i + 0.5) / Side), area.Top + ((area.Bottom - area.Top) * (j + 0.5) / Side));
                var (column, row) = ((int)Math.Floor(x), (int)Math.Floor(y));
                if (column < 0 || row < 0 || column >= scan.Width || row >= scan.Height)
                {
                    throw new RefusalException("A patch reaches beyond the scan's border; scan again with some room on every side.");
                }

                var value = scan.LightAt(column, row);
                values[(i * Side) + j] = value;
                light += value >= 1 ? 1 : 0;
                dark += value <= 0 ? 1 : 0;
            }
        }

        Array.Sort(values);
        var from = (int)(values.Length * Trimmed);
        var sum = 0.0;
        for (var i = from; i < values.Length - from; i++)
        {
            sum += values[i];
        }

        return new PatchLight(sum / (values.Length - (2 * from)), light / (double)values.Length, dark / (double)values.Length);
    }
}
