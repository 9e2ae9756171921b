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
    private const double CodesToTheStop = 40;
    private static readonly Length AroundATone = Length.FromMillimetres(1.5);

    internal PrintComparison(PrintLie lie, double agreement, double right, double up, ScannedPrint print, float[] stopsOff)
    {
        Lie = lie;
        Agreement = agreement;
        RightMillimetres = right;
        UpMillimetres = up;
        Print = print;
        StopsOff = stopsOff;
        float[] known = [.. stopsOff.Where(float.IsFinite)];
        Array.Sort(known);
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

    /// <summary>The middle one of the differences; null where none can be told.</summary>
    public Stops? MedianOff { get; }

    /// <summary>Part of what can be told that is within half a stop, 0 to 1.</summary>
    public double WithinHalfStop { get; }

    /// <summary>How sharp it is against the prediction; null where the picture has too little detail to tell.</summary>
    public PrintSharpness? Sharpness { get; internal init; }

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
        var laying = PrintLaying.Begin(setting, image, curve, exposure, rim);
        PrintComparison? comparison;
        do
        {
            comparison = laying.Step(cancellation);
        }
        while (comparison is null);

        return comparison;
    }

    /// <summary>Density of the print where a place of the finished picture came to lie; null where that is beyond the sheet.</summary>
    /// <param name="picture">From the picture's middle, right and up, as planned.</param>
    /// <param name="around">How far around it.</param>
    public Density? DensityAround(SheetPoint picture, Length around) => Print.DensityAround(
        ((picture.XMillimetres + RightMillimetres) / MillimetresPerPixel) + ((Print.Width - 1) / 2.0),
        ((Print.Height - 1) / 2.0) - ((picture.YMillimetres + UpMillimetres) / MillimetresPerPixel),
        Math.Clamp(around.Millimetres / MillimetresPerPixel, 0.75, ScannedPrint.FarthestAround));

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
}
