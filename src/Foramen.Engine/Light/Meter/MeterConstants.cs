using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// Calibration constants of a light meter, ISO 2720:1974: K for reflected light, C for incident light. Luminance in cd/m², illuminance in
/// lx. The standard's ranges are from memory: K 10.6 to 13.4, C 240 to 400 flat and 320 to 540 dome.
/// </summary>
/// <remarks>K 12.5 and 14 are both in common use; 14 lies outside the standard's range, so up to 14.5 is taken here.</remarks>
public sealed record MeterConstants
{
    /// <summary>K 12.5, C 250 flat, 330 dome: the usual values.</summary>
    public static MeterConstants Usual { get; } = new();

    /// <summary>K 14, the other common calibration of spot meters and cameras.</summary>
    public static MeterConstants WithFourteen { get; } = new() { Reflected = 14 };

    /// <summary>K for reflected light, 10.6 to 14.5.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public double Reflected
    {
        get;
        init => field = Guard.Within(value, 10.6, 14.5, "the meter constant K");
    }

    = 12.5;

    /// <summary>C for a flat receptor, 240 to 400.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public double IncidentFlat
    {
        get;
        init => field = Guard.Within(value, 240, 400, "the meter constant C of a flat receptor");
    }

    = 250;

    /// <summary>C for a dome, 320 to 540.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public double IncidentDome
    {
        get;
        init => field = Guard.Within(value, 320, 540, "the meter constant C of a dome");
    }

    = 330;

    /// <summary>C for a receptor.</summary>
    public double Incident(IncidentReceptor receptor) => receptor == IncidentReceptor.Flat ? IncidentFlat : IncidentDome;
}
