namespace Foramen.Cli.Output;

/// <summary>What <c>foramen camera --json</c> says.</summary>
internal sealed record CameraReport
{
    public required string Name { get; init; }

    public required double HoleDiameterMm { get; init; }

    public required double FocalDistanceMm { get; init; }

    public required double FNumber { get; init; }

    /// <summary>Spread of the hole's area from the doubt in its diameter, stops.</summary>
    public required double HoleSdStops { get; init; }

    public required double HorizontalFieldDeg { get; init; }

    public required double VerticalFieldDeg { get; init; }

    public required double DiagonalFieldDeg { get; init; }

    /// <summary>Light lost in the darkest corner against the middle, stops (negative).</summary>
    public required double CornerFalloffStops { get; init; }

    /// <summary>Light lost at the middle of the darkest edge, stops (negative).</summary>
    public required double EdgeFalloffStops { get; init; }

    /// <summary>Diameter that holds 80 % of a point's light, mm.</summary>
    public required double SpotWidthMm { get; init; }

    /// <summary>Line pairs per mm that still have a tenth of their contrast.</summary>
    public required double LinePairsPerMmAtTenth { get; init; }

    /// <summary>Diameter with the best contrast of fine detail for this distance, mm.</summary>
    public required double BestDiameterMm { get; init; }

    /// <summary>Rayleigh's optimum (1891), 1.9·√(λf), mm.</summary>
    public required double RayleighDiameterMm { get; init; }

    public required double MeanNanometres { get; init; }

    /// <summary>Standard deviation of the focal distance, mm; 0 where nobody has measured it.</summary>
    public required double FocalDistanceSdMm { get; init; }

    /// <summary>Light against that on the axis, stops, row by row from the top of the picture.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> FalloffStops { get; init; }

    /// <summary>Part of the hole's opening that its edge leaves in the worst corner, 0 to 1.</summary>
    public required double CornerOpenPart { get; init; }

    /// <summary>Whether that is half or more.</summary>
    public required bool HoleCoversCorners { get; init; }
}
