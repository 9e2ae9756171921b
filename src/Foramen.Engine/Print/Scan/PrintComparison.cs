using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>
/// A real print laid over the predicted one: how it lay on the scan, how far the camera was aimed off, where it is lighter or darker in stops, and how its sharpness compares.
/// Immutable.
/// </summary>
/// <remarks>
/// Limits: shift only, no turn within the frame; where both prints are beyond what the paper can tell, the difference is unknown; the scanner's own softness counts as the
/// print's.
/// </remarks>
public sealed class PrintComparison
{
    private const int Coarse = 60;
    private const int Fine = 240;

    // A pixel of the coarse grid is four of the fine one, and the parabola goes between them.
    private const int FineReach = 3;
    private const double FarthestShift = 0.1;
    private const double LeastAgreement = 0.35;
    private const double Square = 1.15;
    private const double CodesToTheStop = 40;
    private static readonly Length AroundATone = Length.FromMillimetres(1.5);

    private PrintComparison(PrintLie lie, double agreement, double right, double up, ScannedPrint print, float[] stopsOff)
    {
        Lie = lie;
        Agreement = agreement;
        RightMillimetres = right;
        UpMillimetres = up;
        Print = print;
        StopsOff = stopsOff;
        float[] known = [.. stopsOff.Where(float.IsFinite)];
        Array.Sort(known);
        Known = known.Length / (double)stopsOff.Length;
        MedianOff = known.Length == 0 ? null : Stops.FromValue(known[known.Length / 2]);
        WithinHalfStop = known.Length == 0 ? 0 : known.Count(one => Math.Abs(one) <= 0.5) / (double)known.Length;
    }

    /// <summary>How the print lay on the scan.</summary>
    public PrintLie Lie { get; }

    /// <summary>Correlation of the two, 0.35 to 1.</summary>
    public double Agreement { get; }

    /// <summary>How far to the right the real picture lies against the predicted one, mm: the camera was aimed as much to the left.</summary>
    public double RightMillimetres { get; }

    /// <summary>How far up the real picture lies, mm: the camera was aimed as much too low.</summary>
    public double UpMillimetres { get; }

    /// <summary>The print, straightened and upright, on the grid of the predicted one.</summary>
    public ScannedPrint Print { get; }

    /// <summary>From pixel to pixel of that grid, mm.</summary>
    public required double MillimetresPerPixel { get; init; }

    /// <summary>How much lighter the subject came out than predicted, stops, in rows on that grid; NaN in the rim and where it cannot be told.</summary>
    public ReadOnlyMemory<float> StopsOff { get; }

    /// <summary>Part of the sheet where the difference can be told, 0 to 1.</summary>
    public double Known { get; }

    /// <summary>The middle one of the differences; null where none can be told.</summary>
    public Stops? MedianOff { get; }

    /// <summary>Part of what can be told that is within half a stop, 0 to 1.</summary>
    public double WithinHalfStop { get; }

    /// <summary>How sharp it is against the prediction; null where the picture has too little detail to tell.</summary>
    public PrintSharpness? Sharpness { get; private init; }

    /// <summary>Lays a print over its prediction.</summary>
    /// <param name="setting">The print on its scan.</param>
    /// <param name="image">The light that was expected on the sheet.</param>
    /// <param name="curve">The paper's curve.</param>
    /// <param name="exposure">What it was given.</param>
    /// <param name="rim">Width of the rim where the sheet was held and no light fell.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="RefusalException">The print does not look like the prediction in any way it may lie.</exception>
    public static PrintComparison Of(
        PrintSetting setting, SheetImage image, CharacteristicCurve curve, PrintExposure exposure, Length rim, CancellationToken cancellation = default)
    {
        var predicted = PredictedPrint.Expose(image, curve, exposure, new PrintLook { Side = PrintSide.AsProcessed, Border = rim });
        var wanted = new DensityPlane(predicted.Width, predicted.Height, predicted.Densities(cancellation));
        var part = predicted.BorderPixels / (double)Math.Max(predicted.Width, predicted.Height);
        var (lie, coarse) = Lies(setting, predicted).Select(one => (Lie: one, Laid: Laid.Over(wanted, setting, one, Coarse, part, default, FarthestShift * Coarse, cancellation)))
            .MaxBy(one => one.Laid.Agreement);
        var fine = Laid.Over(wanted, setting, lie, Fine, part, coarse, FineReach, cancellation);
        if (fine.Agreement < LeastAgreement)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"The print on this picture does not look like the one expected of this sheet (agreement {Math.Max(0, fine.Agreement):0.00} of 1); choose the picture of this sheet, or check its frame and its corners."));
        }

        var print = ScannedPrint.Read(setting, lie, predicted.Width, predicted.Height, cancellation);
        var scale = Math.Max(predicted.Width, predicted.Height) / (double)Fine;
        var (right, down) = (fine.Right * scale, fine.Down * scale);
        var exposures = new PrintExposures(print, wanted, new LgExposureOfDensity(curve), predicted.BorderPixels, right, down);
        return new PrintComparison(lie, fine.Agreement, right * predicted.PitchMillimetres, -down * predicted.PitchMillimetres, print, exposures.StopsOff())
        {
            MillimetresPerPixel = predicted.PitchMillimetres,
            Sharpness = PrintSharpness.Of(exposures, predicted.PitchMillimetres),
        };
    }

    /// <summary>Density of the print where a place of the finished picture came to lie; null where that is beyond the sheet.</summary>
    /// <param name="picture">From the picture's middle, right and up, as planned.</param>
    /// <param name="around">How far around it.</param>
    public Density? DensityAround(SheetPoint picture, Length around) => Print.DensityAround(
        ((picture.XMillimetres + RightMillimetres) / MillimetresPerPixel) + ((Print.Width - 1) / 2.0),
        ((Print.Height - 1) / 2.0) - ((picture.YMillimetres + UpMillimetres) / MillimetresPerPixel),
        Math.Max(0.75, around.Millimetres / MillimetresPerPixel));

    /// <summary>What came of a tone where it came to lie; null where that is beside the sheet, or where the tone has no place in the photograph.</summary>
    /// <param name="tone">The tone.</param>
    /// <param name="projection">What the sheet was to see.</param>
    /// <param name="curve">The paper's curve.</param>
    public MeasuredTone? ToneAt(Tone tone, SheetProjection projection, CharacteristicCurve curve)
        => tone.Position is { } position && projection.PicturePlaceOf(position) is { } place && DensityAround(place, AroundATone) is { } density
            ? MeasuredTone.Of(curve, tone.Rendering, density)
            : null;

    /// <summary>How far the camera was aimed beside the plan, to the right and up, degrees.</summary>
    /// <param name="camera">The camera.</param>
    public (double Right, double Up) AimedOffDegrees(PinholeCamera camera)
    {
        double Degrees(double millimetres) => Math.Atan2(millimetres, camera.FocalDistance.Millimetres) * 180 / Math.PI;
        return (Degrees(-RightMillimetres), Degrees(-UpMillimetres));
    }

    /// <summary>The difference as 8-bit grey: 128 where the print is as predicted, 40 lighter for each stop that it came out lighter, 0 where it cannot be told.</summary>
    public byte[] DifferenceCodes()
        => Array.ConvertAll(StopsOff.ToArray(), off => float.IsNaN(off) ? (byte)0 : (byte)Math.Clamp(Math.Round(128 + (CodesToTheStop * off)), 1, 255));

    // Both mirrored and not: some scan the sheet, some the print made from it, and some programs turn it over.
    private static PrintLie[] Lies(PrintSetting setting, PredictedPrint predicted)
    {
        var shape = predicted.Width / (double)predicted.Height;
        var lies = setting.Corners.WidthOverHeight;
        var isSquare = shape is < Square and > 1 / Square;
        bool MayLie(int quarters) => isSquare || (quarters % 2 == 0 ? lies : 1 / lies) > 1 == shape > 1;
        return [.. Enumerable.Range(0, 4).Where(MayLie).SelectMany(quarters => new[] { new PrintLie(quarters, true), new PrintLie(quarters, false) })];
    }

    private readonly record struct Laid(double Agreement, double Right, double Down, int LongSide)
    {
        // Searches all whole shifts about a first guess, and then between them by the parabola through the best and its neighbours.
        public static Laid Over(
            DensityPlane wanted, PrintSetting setting, PrintLie lie, int longSide, double rimPart, Laid guess, double reach, CancellationToken cancellation)
        {
            var factor = longSide / (double)Math.Max(wanted.Width, wanted.Height);
            var (width, height) = (Math.Max(8, (int)Math.Round(wanted.Width * factor)), Math.Max(8, (int)Math.Round(wanted.Height * factor)));
            var small = wanted.Reduced(width, height);
            var print = ScannedPrint.Read(setting, lie, width, height, cancellation);
            var real = new DensityPlane(width, height, print.Densities());
            var rim = rimPart > 0 ? (int)Math.Ceiling(rimPart * longSide) + 1 : 0;
            var (middleX, middleY) = guess.LongSide == 0 ? (0, 0) : ((int)Math.Round(guess.Right * longSide / guess.LongSide), (int)Math.Round(guess.Down * longSide / guess.LongSide));
            var best = (Agreement: -1.0, X: middleX, Y: middleY);
            for (var y = -(int)reach; y <= (int)reach; y++)
            {
                cancellation.ThrowIfCancellationRequested();
                for (var x = -(int)reach; x <= (int)reach; x++)
                {
                    if (small.LikenessTo(real, rim, middleX + x, middleY + y) is { } likeness && likeness > best.Agreement)
                    {
                        best = (likeness, middleX + x, middleY + y);
                    }
                }
            }

            double At(int x, int y) => small.LikenessTo(real, rim, best.X + x, best.Y + y) ?? best.Agreement;
            return new Laid(
                best.Agreement, best.X + Between(At(-1, 0), best.Agreement, At(1, 0)), best.Y + Between(At(0, -1), best.Agreement, At(0, 1)), longSide);
        }

        private static double Between(double before, double at, double after)
        {
            var bend = before - (2 * at) + after;
            return bend < 0 ? Math.Clamp(0.5 * (before - after) / bend, -0.5, 0.5) : 0;
        }
    }
}
