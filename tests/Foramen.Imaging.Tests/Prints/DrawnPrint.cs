using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using OpenCvSharp;

namespace Foramen.Imaging.Tests.Prints;

/// <summary>
/// A print whose densities are known, laid on grey ground beside two patches of known density, photographed aslant in light that falls off, with flare and noise. Everything
/// that puts it into the picture is OpenCV's: the perspective, the sampling, the softening.
/// </summary>
internal sealed class DrawnPrint
{
    public const double LightPatch = 0.06;
    public const double Usual = 1500;
    public const double DarkPatch = 1.35;
    public const int Width = 1500;
    public const int Height = 1200;
    public static readonly Length Rim = Length.FromMillimetres(5);

    private const int LongSide = 900;
    private const int Times = 2;
    private const double GroundDensity = 0.55;

    private SheetImage? planned;
    private (int Width, int Height, double PitchMillimetres, float[] Densities)? truth;

    public required PaperKind Kind { get; init; }

    public int Seed { get; init; } = 1;

    /// <summary>Effective exposure for each lux of the image: what puts these luminances on the curve.</summary>
    public double EffectiveSeconds { get; init; } = Usual;

    public Angle Pan { get; init; }

    public double SofterMillimetres { get; init; }

    public double Falling { get; init; } = 0.35;

    public double Flare { get; init; } = 0.01;

    public double Noise { get; init; } = 0.004;

    public PrintLie Lie { get; init; } = new(0, true);

    /// <summary>Where its corners lie, clockwise from the upper left.</summary>
    public static IReadOnlyList<PixelPoint> Corners { get; } = [PixelPoint.At(230.3, 190.8), PixelPoint.At(1290.6, 120.2), PixelPoint.At(1340.1, 1040.7), PixelPoint.At(170.4, 960.5)];

    public CharacteristicCurve Curve => LogisticCurve.FromRange(
        Kind, Density.FromValue(0.06), Density.FromValue(Kind == PaperKind.DirectPositive ? 1.65 : 1.95), 120, Density.FromValue(0.66), LuminousExposure.FromLuxSeconds(2));

    public PrintExposure Exposure => PrintExposure.FromEffective(EffectiveSeconds);

    /// <summary>The light that was planned for: aimed straight.</summary>
    public SheetImage Planned => planned ??= Image(default);

    /// <summary>The light that was.</summary>
    public SheetImage Real => Pan.Degrees == 0 ? Planned : Image(Pan);

    public static IReadOnlyList<KnownPatch> Known { get; } =
    [
        new(PixelPoint.At(80, 100), 24, Density.FromValue(LightPatch)), new(PixelPoint.At(80, 200), 24, Density.FromValue(DarkPatch)),
    ];

    /// <summary>Densities of the sheet as processed, rim and all, as the subject stood.</summary>
    public (int Width, int Height, double PitchMillimetres, float[] Densities) Truth() => truth ??= Made();

    private (int Width, int Height, double PitchMillimetres, float[] Densities) Made()
    {
        var image = Real;
        var print = PredictedPrint.Expose(image, Curve, Exposure, new PrintLook { Side = PrintSide.AsProcessed, Border = Rim });
        var densities = print.Densities();
        if (SofterMillimetres > 0)
        {
            using var lux = new Mat(image.Grid.Height, image.Grid.Width, MatType.CV_32FC1);
            System.Runtime.InteropServices.Marshal.Copy(image.Lux.ToArray(), 0, lux.Data, image.Lux.Length);
            using var soft = new Mat();
            Cv2.GaussianBlur(lux, soft, new Size(0, 0), SofterMillimetres / image.Grid.PitchMillimetres);
            for (var row = 0; row < image.Grid.Height; row++)
            {
                for (var column = 0; column < image.Grid.Width; column++)
                {
                    densities[((row + print.BorderPixels) * print.Width) + column + print.BorderPixels]
                        = (float)Curve.DensityAt(LuminousExposure.FromLuxSeconds(soft.At<float>(row, column) * EffectiveSeconds)).Value;
                }
            }
        }

        return (print.Width, print.Height, print.PitchMillimetres, densities);
    }

    /// <summary>The photograph of it.</summary>
    public ScanImage Draw()
    {
        var (width, height, _, densities) = Truth();
        using var print = new Mat(height, width, MatType.CV_32FC1);
        for (var i = 0; i < densities.Length; i++)
        {
            print.Set(i / width, Lie.Mirrored ? width - 1 - (i % width) : i % width, (float)Math.Pow(10, -densities[i]));
        }

        // A print that lies turned by so many quarters has its top where the names of the corners have moved on to.
        var names = new PrintCorners(Corners[0], Corners[1], Corners[2], Corners[3]).Turned(Lie.Quarters);
        Point2f[] to = [.. new[] { names.TopLeft, names.TopRight, names.BottomRight, names.BottomLeft }.Select(corner => Large(corner.X, corner.Y))];
        using var turn = Cv2.GetPerspectiveTransform([new(-0.5f, -0.5f), new(width - 0.5f, -0.5f), new(width - 0.5f, height - 0.5f), new(-0.5f, height - 0.5f)], to);
        using var large = new Mat(Height * Times, Width * Times, MatType.CV_32FC1, new Scalar(Math.Pow(10, -GroundDensity)));
        foreach (var patch in Known)
        {
            var from = Large(patch.Middle.X - 40, patch.Middle.Y - 40);
            Cv2.Rectangle(large, new Rect((int)from.X, (int)from.Y, 80 * Times, 80 * Times), new Scalar(Math.Pow(10, -patch.Density.Value)), -1);
        }

        Cv2.WarpPerspective(print, large, turn, large.Size(), InterpolationFlags.Linear, BorderTypes.Transparent);
        using var seen = new Mat();
        Cv2.Resize(large, seen, new Size(Width, Height), 0, 0, InterpolationFlags.Area);
        return Photographed(seen);
    }

    private static Point2f Large(double x, double y) => new((float)((x * Times) - 0.5), (float)((y * Times) - 0.5));

    private ScanImage Photographed(Mat seen)
    {
        var chance = new Random(Seed);
        var codes = new byte[Width * Height];
        for (var i = 0; i < codes.Length; i++)
        {
            var (u, v) = ((i % Width / (double)Width) - 0.4, (i / Width / (double)Height) - 0.6);
            var light = 0.85 * Math.Exp(-Falling * ((u * u) + (v * v) + (0.6 * u))) * (Flare + ((1 - Flare) * seen.At<float>(i / Width, i % Width)));
            var normal = Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
            codes[i] = Code(light + (Noise * normal * Math.Sqrt(Math.Max(0, light))));
        }

        return ScanImage.FromGrey(Width, Height, codes);
    }

    // IEC 61966-2-1, linear to code.
    private static byte Code(double light)
    {
        var v = Math.Clamp(light, 0, 1);
        return (byte)Math.Round(255 * (v <= 0.0031308 ? 12.92 * v : (1.055 * Math.Pow(v, 1 / 2.4)) - 0.055));
    }

    // Leaves of all sizes fallen on one another, each of one luminance: edges everywhere, and detail at every fineness.
    private SheetImage Image(Angle pan)
    {
        const int Across = 1400, Down = 1050;
        var chance = new Random(Seed * 7919);
        var values = new float[Across * Down];
        Array.Fill(values, 40f);
        for (var leaf = 0; leaf < 1500; leaf++)
        {
            var size = 6 + (120 * Math.Pow(chance.NextDouble(), 4));
            var (x, y, ratio, luminance) = (chance.NextDouble() * Across, chance.NextDouble() * Down, 0.4 + chance.NextDouble(), (float)(10 * Math.Pow(10, 1.6 * chance.NextDouble())));
            for (var row = Math.Max(0, (int)(y - size)); row < Math.Min(Down, y + size); row++)
            {
                for (var column = Math.Max(0, (int)(x - (size * ratio))); column < Math.Min(Across, x + (size * ratio)); column++)
                {
                    values[(row * Across) + column] = luminance;
                }
            }
        }

        var box = PinholeCamera.Create("box", Hole.FromDiameter(Length.FromMillimetres(0.35)), Length.FromMillimetres(90), SheetSize.FromMillimetres(120, 90));
        var projection = SheetProjection.Of(
            box, PhotographField.FromHorizontalAngle(Across, Down, Angle.FromDegrees(80)), null, SheetAim.FromAngles(pan));
        return SheetImage.Make(LuminanceMap.FromValues(Across, Down, values), projection, LongSide, PointSpread.Of(projection.Camera, PaperLight.Of(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive)));
    }
}
