namespace Foramen.Cli.Output;

/// <summary>What <c>foramen hole --json</c> says.</summary>
internal sealed record HoleReport
{
    /// <summary>Diameter of the circle with the hole's area, mm.</summary>
    public required double DiameterMm { get; init; }

    public required double DiameterSdMm { get; init; }

    /// <summary>Least width over largest, 0 to 1.</summary>
    public required double Roundness { get; init; }

    public required double LeastWidthMm { get; init; }

    public required double MostWidthMm { get; init; }

    /// <summary>Largest radius less smallest about the least-squares middle, mm.</summary>
    public required double RoundnessDeviationMm { get; init; }

    public required double BurrMm { get; init; }

    public required double NotchMm { get; init; }

    /// <summary>Middle of the hole in the scan, pixels from its upper left corner.</summary>
    public required double XPixels { get; init; }

    public required double YPixels { get; init; }

    public required double DiameterPixels { get; init; }

    public required double BlurPixels { get; init; }

    public required double DotsPerInch { get; init; }

    /// <summary>Where the resolution was taken from.</summary>
    public required string ResolutionFrom { get; init; }

    public double? OffsetRightMm { get; init; }

    public double? OffsetUpMm { get; init; }

    /// <summary>What the hole does in a camera, if one was named.</summary>
    public HoleCameraReport? Camera { get; init; }

    public required IReadOnlyList<string> Doubts { get; init; }
}
