namespace Foramen.Engine.Camera;

/// <summary>How the codes of a scan stand for light.</summary>
public enum ScanEncoding
{
    /// <summary>The transfer function of sRGB (IEC 61966-2-1), as scanners and phones write pictures for looking at.</summary>
    Srgb,

    /// <summary>Codes in proportion to light, as a scanner writes them with its gamma at 1.</summary>
    Linear,
}
