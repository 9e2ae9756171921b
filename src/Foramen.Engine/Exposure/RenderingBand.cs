using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Exposure;

/// <summary>
/// The densities at which a tone counts as rendered as wanted, and the one aimed at, as total effective exposures on a given curve. The bands
/// are shares of the net density; they are our statement of craft (common practice, no source), written down in ADR 0004.
/// </summary>
/// <param name="Low">Least total effective exposure; zero where there is no lower limit.</param>
/// <param name="Aim">The exposure aimed at; null for a tone that may burn or block.</param>
/// <param name="High">Most total effective exposure; positive infinity (as null) where there is no upper limit.</param>
public sealed record RenderingBand(LuminousExposure Low, LuminousExposure? Aim, LuminousExposure? High)
{
    /// <summary>The band of a rendering on a paper's curve.</summary>
    public static RenderingBand On(CharacteristicCurve curve, Rendering rendering)
    {
        var negative = curve.Kind == PaperKind.NegativeWorking;
        var firstTone = IsoPaperMeasures.FirstToneNetDensity / curve.NetDensity;

        // Shares of net density: the end with less exposure, the aim, the end with more exposure.
        (double? Less, double? Aim, double? More) share = (rendering, negative) switch
        {
            (Rendering.OpenShadow, true) => (firstTone, 0.10, 0.35),
            (Rendering.OpenShadow, false) => (0.93, 0.80, 0.50),
            (Rendering.Mid, true) => (0.14, IsoPaperMeasures.SpeedPointNetDensity / curve.NetDensity, 0.55),
            (Rendering.Mid, false) => (0.60, (ExposureIndex.PositiveMidToneDensity - curve.MinimumDensity.Value) / curve.NetDensity, 0.18),
            (Rendering.TexturedHighlight, true) => (0.50, 0.78, 0.92),
            (Rendering.TexturedHighlight, false) => (0.26, 0.10, firstTone),
            _ => (null, null, null),
        };

        return new RenderingBand(
            At(share.Less) ?? default,
            At(share.Aim),
            At(share.More));

        LuminousExposure? At(double? part) => part is { } p
            ? curve.ExposureFor(Density.FromValue(curve.MinimumDensity.Value + (Math.Clamp(p, 0.01, 0.99) * curve.NetDensity)))
            : null;
    }

    /// <summary>The band with its edges this many times as far from the aim, in stops: for one who keeps more, or less, than the bands say.</summary>
    /// <param name="tolerance">1 for the band itself.</param>
    public RenderingBand Stretched(double tolerance)
    {
        return Aim is not { } aim || tolerance == 1 ? this : new RenderingBand(Edge(Low), aim, High is { } high ? Edge(high) : null);

        LuminousExposure Edge(LuminousExposure edge) => edge.LuxSeconds <= 0
            ? edge
            : LuminousExposure.FromLuxSeconds(aim.LuxSeconds * Math.Pow(edge.LuxSeconds / aim.LuxSeconds, tolerance));
    }
}
