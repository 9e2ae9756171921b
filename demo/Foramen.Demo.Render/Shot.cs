namespace Foramen.Demo.Render;

/// <summary>One photograph of the scene: where the phone pointed, how it exposed, what the light was.</summary>
/// <param name="Name">File name without its ending.</param>
/// <param name="Light">The light.</param>
/// <param name="FocalLength35">Focal length in terms of 36 × 24 mm, by the diagonal, mm.</param>
/// <param name="PanDegrees">To the right.</param>
/// <param name="TimeDenominator">Exposure time as one over this, s.</param>
/// <param name="FNumberTimesTen">f-number in tenths.</param>
/// <param name="Iso">Sensitivity (standard output sensitivity).</param>
/// <param name="Taken">Time by the phone's clock, as Exif writes it.</param>
internal sealed record Shot(
    string Name, DayLight Light, int FocalLength35, double PanDegrees, int TimeDenominator, int FNumberTimesTen, int Iso, string Taken)
{
    public static IReadOnlyList<Shot> All { get; } =
    [
        new("canal-basin", DayLight.Afternoon, 14, 0, 1600, 22, 50, "2026:05:09 14:20:00"),
        new("canal-basin-shade", DayLight.Overcast, 20, 24, 640, 22, 50, "2026:05:10 10:05:00"),
        new("canal-basin-dusk", DayLight.Dusk, 14, 0, 30, 22, 800, "2026:05:09 21:48:00"),
    ];

    public double FNumber => FNumberTimesTen / 10.0;

    public double Seconds => 1.0 / TimeDenominator;

    /// <summary>
    /// Luminance at which the code saturates, by standard output sensitivity (ISO 12232): H = 10/S gives code 118, and H = 0.65·L·t/N² behind a lens.
    /// </summary>
    public double WhiteLuminance => 10.0 / Iso * FNumber * FNumber / (0.65 * Seconds) / Srgb.ToLinear(118 / 255.0);
}
