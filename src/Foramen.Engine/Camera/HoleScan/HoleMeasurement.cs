using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>A hole as a scan shows it. Immutable.</summary>
public sealed record HoleMeasurement
{
    /// <summary>Diameter of the circle with the hole's area, which is what light and exposure go by.</summary>
    public required Length Diameter { get; init; }

    /// <summary>
    /// Standard deviation of the diameter: noise along the edge, edge left over, 0.02 pixel for what the model of the edge leaves out, and the doubt in the resolution.
    /// </summary>
    public required Length DiameterSd { get; init; }

    /// <summary>Smallest width of the hole: least distance between parallel lines that touch it (Feret, ISO 9276-6).</summary>
    public required Length LeastWidth { get; init; }

    /// <summary>Largest width of the hole.</summary>
    public required Length MostWidth { get; init; }

    /// <summary>Least width over largest, 0 to 1: one for a circle, short over long axis for an ellipse (aspect ratio, ISO 9276-6).</summary>
    public double Roundness => LeastWidth.Metres / MostWidth.Metres;

    /// <summary>Largest radius less smallest about the least-squares middle (RONt, LSCI, ISO 12181-1), burrs included.</summary>
    public required Length RoundnessDeviation { get; init; }

    /// <summary>How far a burr reaches into the hole beyond the smooth outline; zero where nothing is larger than noise.</summary>
    public required Length Burr { get; init; }

    /// <summary>How far a notch reaches out of it; zero as above.</summary>
    public required Length Notch { get; init; }

    /// <summary>Middle of the hole in the scan.</summary>
    public required PixelPoint Middle { get; init; }

    /// <summary>The outline in the scan, once about.</summary>
    public required IReadOnlyList<PixelPoint> Outline { get; init; }

    /// <summary>Width of the scan's blur at the edge, one standard deviation, pixels.</summary>
    public required double BlurPixels { get; init; }

    /// <summary>Pixels across.</summary>
    public required double DiameterPixels { get; init; }

    /// <summary>Whether the hole is brighter than the plate in the scan.</summary>
    public required bool IsBright { get; init; }

    /// <summary>Where the hole lies from where it should be: to the right and upwards in the scan, mm; null where nothing was said.</summary>
    public (double RightMillimetres, double UpMillimetres)? Offset { get; init; }

    /// <summary>What should be known before the result is trusted, in sentences; empty when all is well.</summary>
    public required IReadOnlyList<string> Doubts { get; init; }

    /// <summary>The diameter's standard deviation over the diameter.</summary>
    public double RelativeSd => DiameterSd.Metres / Diameter.Metres;

    /// <summary>The hole for a camera.</summary>
    /// <param name="edgeThickness">Thickness of the plate; as assumed where nothing is said.</param>
    /// <exception cref="RefusalException">Outside what a <see cref="Hole"/> may be.</exception>
    public Hole ToHole(Length? edgeThickness = null) => Hole.FromDiameter(Diameter, RelativeSd, edgeThickness);
}
