using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>A print read from a scan: straightened, turned as the finished picture is looked at, as reflectances on a grid over the whole sheet. Immutable.</summary>
/// <remarks>Limit: trust densities to about 1.7, for glossy blacks read too light by flare (common practice, no source).</remarks>
public sealed class ScannedPrint
{
    /// <summary>Density beyond which a scan is not to be trusted.</summary>
    public const double TrustedDensity = 1.7;

    /// <summary>Farthest around a place that is read, pixels.</summary>
    internal const double FarthestAround = 100;

    private const int RowsInBand = 32;
    private const double Darkest = 1e-4;
    private const double MostClipped = 0.01;

    // Each way in a cell; coarse grids look at some of their pixels only.
    private const int MostSamples = 4;
    private readonly float[] reflectances;

    private ScannedPrint(int width, int height, float[] reflectances, double clippedLight, double clippedDark)
        => (Width, Height, this.reflectances, ClippedLight, ClippedDark) = (width, height, reflectances, clippedLight, clippedDark);

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>Reflectances in rows from the top; some above 1 where the light was misjudged.</summary>
    public ReadOnlySpan<float> Reflectances => reflectances;

    /// <summary>Part of the sheet at the scan's highest code, 0 to 1.</summary>
    public double ClippedLight { get; }

    /// <summary>Part of the sheet at the scan's lowest code, 0 to 1.</summary>
    public double ClippedDark { get; }

    /// <summary>Whether so much is at the scan's highest code that its lightest tones are not to be trusted: more than a hundredth.</summary>
    public bool IsClippedLight => ClippedLight > MostClipped;

    /// <summary>Whether so much is at the lowest code that its darkest tones are not to be trusted.</summary>
    public bool IsClippedDark => ClippedDark > MostClipped;

    /// <summary>Reads a print.</summary>
    /// <param name="setting">The scan, where the print is on it, and what its light means.</param>
    /// <param name="lie">How it lies.</param>
    /// <param name="width">Columns over the whole sheet, 8 to 12 000.</param>
    /// <param name="height">Rows, 8 to 12 000.</param>
    /// <param name="cancellation">Stops between bands of rows.</param>
    /// <exception cref="RefusalException">A size outside its range, or corners beyond the scan.</exception>
    public static ScannedPrint Read(PrintSetting setting, PrintLie lie, int width, int height, CancellationToken cancellation = default)
    {
        Guard.Within(width, 8, SheetGrid.MostPixels, "the columns of the print", "pixels");
        Guard.Within(height, 8, SheetGrid.MostPixels, "the rows of the print", "pixels");
        var corners = setting.Corners.Turned(lie.Quarters);
        var (scan, map) = (setting.Scan, corners.ToMap());
        var samples = (int)Math.Clamp(Math.Ceiling(corners.LongSidePixels / Math.Max(width, height)), 2, MostSamples);
        var values = new float[width * height];
        var clipped = new (int Light, int Dark)[height];
        RowWork.Run(
            height,
            RowsInBand,
            (from, to) =>
            {
                var sums = new float[width];
                for (var row = from; row < to; row++)
                {
                    Array.Clear(sums);
                    for (var line = 0; line < samples; line++)
                    {
                        var (light, dark) = AddLine(scan, map.Along((row + ((line + 0.5) / samples)) / height), lie.Mirrored, samples, sums);
                        clipped[row] = (clipped[row].Light + light, clipped[row].Dark + dark);
                    }

                    for (var column = 0; column < width; column++)
                    {
                        var (x, y) = map.Map(lie.Mirrored ? 1 - ((column + 0.5) / width) : (column + 0.5) / width, (row + 0.5) / height);
                        values[(row * width) + column] = (float)setting.Scale.ReflectanceOf(sums[column] / (samples * samples) / setting.UnevennessAt(x, y));
                    }
                }
            },
            null,
            cancellation);
        var all = (double)width * height * samples * samples;
        return new ScannedPrint(width, height, values, clipped.Sum(one => (double)one.Light) / all, clipped.Sum(one => (double)one.Dark) / all);
    }

    /// <summary>Density around a place, of the middle three fifths of its pixels by brightness, so that dust does not count; null where it lies outside the sheet.</summary>
    /// <param name="column">Across, in pixels; the middle of the first is at 0.</param>
    /// <param name="row">Down.</param>
    /// <param name="radius">How far around, pixels, 0.5 to 100.</param>
    public Density? DensityAround(double column, double row, double radius)
    {
        Guard.Within(radius, 0.5, FarthestAround, "the radius around a tone", "pixels");
        var values = new List<float>();
        for (var y = (int)Math.Ceiling(row - radius); y <= row + radius; y++)
        {
            for (var x = (int)Math.Ceiling(column - radius); x <= column + radius; x++)
            {
                if (x >= 0 && y >= 0 && x < Width && y < Height && double.Hypot(x - column, y - row) <= radius)
                {
                    values.Add(reflectances[(y * Width) + x]);
                }
            }
        }

        if (values.Count == 0)
        {
            return null;
        }

        values.Sort();
        var from = values.Count / 5;
        return DensityOf(values[from..(values.Count - from)].Average());
    }

    /// <summary>
    /// The finished picture as 8-bit grey in sRGB's transfer function, the paper's own white as white; a paper negative turned into its positive, its densities mirrored between
    /// the paper's lightest and darkest.
    /// </summary>
    /// <param name="curve">The paper's curve.</param>
    public byte[] PositiveCodes(CharacteristicCurve curve)
    {
        var (least, most) = (curve.MinimumDensity.Value, curve.MaximumDensity.Value);
        return Array.ConvertAll(reflectances, reflectance =>
        {
            var density = DensityOf(reflectance).Value;
            var shown = curve.Kind == PaperKind.NegativeWorking ? least + most - density : density;
            return SrgbTransfer.CodeOf(Math.Pow(10, least - shown));
        });
    }

    // Adds the light of one line of places to the cells it runs through: the hot path, so without calls. Says how many were at the scan's ends.
    private static (int Light, int Dark) AddLine(
        ScanImage scan, (double Ax, double Bx, double Ay, double By, double Aw, double Bw) line, bool mirrored, int samples, float[] sums)
    {
        var codes = scan.Codes;
        var lightOf = scan.LightOfCodes;
        var (ax, bx, ay, by, aw, bw) = line;
        var (lastX, lastY, stride) = (scan.Width - 1, scan.Height - 1, scan.Width);
        var (light, dark) = (0, 0);
        var step = 1.0 / (sums.Length * samples);
        var u = mirrored ? 1 - (step / 2) : step / 2;
        step = mirrored ? -step : step;
        for (var column = 0; column < sums.Length; column++)
        {
            var sum = 0f;
            for (var i = 0; i < samples; i++)
            {
                var w = 1 / ((aw * u) + bw);
                var (x, y) = ((int)(((ax * u) + bx) * w), (int)(((ay * u) + by) * w));
                x = x < 0 ? 0 : x > lastX ? lastX : x;
                y = y < 0 ? 0 : y > lastY ? lastY : y;
                int code = codes[(y * stride) + x];
                sum += lightOf[code];
                light += code == 255 ? 1 : 0;
                dark += code == 0 ? 1 : 0;
                u += step;
            }

            sums[column] += sum;
        }

        return (light, dark);
    }

    /// <summary>The densities of all pixels, in rows from the top.</summary>
    internal float[] Densities() => Array.ConvertAll(reflectances, reflectance => (float)DensityValueOf(reflectance));

    private static Density DensityOf(double reflectance) => Density.FromValue(DensityValueOf(reflectance));

    private static double DensityValueOf(double reflectance) => Math.Clamp(-Math.Log10(Math.Max(Darkest, reflectance)), Density.Min, Density.Max);
}
