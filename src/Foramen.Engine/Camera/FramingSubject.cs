using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>Something upright straight ahead, such as a house front: how far away, how high, and where it begins. Immutable.</summary>
public sealed record FramingSubject
{
    private FramingSubject(Length distance, Length height, double baseMetres)
    {
        Distance = distance;
        Height = height;
        BaseMetres = baseMetres;
    }

    /// <summary>Along the level, from the hole.</summary>
    public Length Distance { get; }

    /// <summary>From its base to its top.</summary>
    public Length Height { get; }

    /// <summary>Its base above the hole, m; negative where it stands lower.</summary>
    public double BaseMetres { get; }

    /// <summary>Its top above the hole, m; negative where it is lower.</summary>
    public double TopMetres => BaseMetres + Height.Metres;

    /// <summary>Elevation of its base from the hole.</summary>
    public Angle BaseElevation => Angle.FromRadians(Math.Atan2(BaseMetres, Distance.Metres));

    /// <summary>Elevation of its top from the hole.</summary>
    public Angle TopElevation => Angle.FromRadians(Math.Atan2(TopMetres, Distance.Metres));

    /// <summary>A subject.</summary>
    /// <param name="distance">Along the level, 0.05 m to 100 km.</param>
    /// <param name="height">From base to top, 1 mm to 10 km.</param>
    /// <param name="baseMetres">Its base above the hole, within ± 10 km; negative where it stands lower.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static FramingSubject Of(Length distance, Length height, double baseMetres)
    {
        Guard.Within(distance.Metres, 0.05, 100_000, "the distance to the subject", "m");
        Guard.Within(height.Metres, 0.001, 10_000, "the subject's height", "m");
        return new FramingSubject(distance, height, Guard.Within(baseMetres, -10_000, 10_000, "the height of the subject's base against the camera", "m"));
    }
}
