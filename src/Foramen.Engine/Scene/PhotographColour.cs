namespace Foramen.Engine.Scene;

/// <summary>The colour space a photograph's codes are in. Both share the transfer function of IEC 61966-2-1.</summary>
public enum PhotographColour
{
    /// <summary>sRGB, IEC 61966-2-1; also assumed where a file says nothing.</summary>
    Srgb,

    /// <summary>Display P3: DCI-P3 primaries, D65 white, the sRGB transfer function.</summary>
    DisplayP3,
}
