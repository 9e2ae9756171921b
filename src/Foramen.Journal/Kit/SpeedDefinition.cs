namespace Foramen.Journal.Kit;

/// <summary>The speed of a paper: either its ISO paper speed, or an exposure index with the time (and the light) it was found at.</summary>
public sealed record SpeedDefinition
{
    /// <summary>ISO paper speed P (negative-working paper only).</summary>
    public double? IsoSpeed { get; init; }

    /// <summary>Exposure index as set on a meter.</summary>
    public double? ExposureIndex { get; init; }

    /// <summary>Exposure time the index was found at, s. Required with an index: an index without its time means nothing.</summary>
    public double? AtSeconds { get; init; }

    /// <summary>Colour temperature of the light the index was found in, K; 5500 where missing.</summary>
    public double? LightKelvin { get; init; }

    /// <summary>Standard deviation of the speed, stops; 0.35 where missing.</summary>
    public double? SdStops { get; init; }
}
