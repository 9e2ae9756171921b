using Foramen.Engine.Camera;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Exposure;

/// <summary>Puts tones of the scene where they lie on the sheet.</summary>
public static class TonePlacement
{
    /// <summary>A tone read by hand, or one without a photograph: it counts as lying on the hole's axis, where the sheet gets most light.</summary>
    /// <param name="tone">The tone.</param>
    /// <param name="camera">The camera.</param>
    public static PlacedTone InTheMiddle(Tone tone, PinholeCamera camera) => At(tone, camera, camera.HoleOffset);

    /// <summary>A tone where the sheet sees it; null if it lies beside the sheet.</summary>
    /// <param name="tone">The tone; without a place it counts as lying in the middle.</param>
    /// <param name="projection">What the sheet sees of the photograph.</param>
    public static PlacedTone? OnSheet(Tone tone, SheetProjection projection)
        => tone.Position is not { } position ? InTheMiddle(tone, projection.Camera)
            : projection.PointOf(position) is { } point ? At(tone, projection.Camera, point)
            : null;

    private static PlacedTone At(Tone tone, PinholeCamera camera, SheetPoint point)
        => new(
            tone.Name,
            tone.Rendering,
            camera.ImageIlluminance(tone.Luminance, point),
            tone.ActinicRatio,
            camera.FalloffStops(point).Ratio,
            tone.MeterSpread,
            tone.ReadingLimit);
}
