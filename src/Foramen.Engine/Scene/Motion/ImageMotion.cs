using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>From motion before the camera to motion on the sheet, for what moves square to the line of sight.</summary>
public static class ImageMotion
{
    /// <summary>How far the image goes near the axis: f·v·t/s.</summary>
    /// <param name="speed">Across the line of sight.</param>
    /// <param name="distance">To what moves, more than 10 cm.</param>
    /// <param name="focalDistance">From the hole to the paper.</param>
    /// <param name="time">How long it moves.</param>
    /// <exception cref="RefusalException">Too near.</exception>
    public static Length Path(MotionSpeed speed, Length distance, Length focalDistance, Duration time)
        => Length.FromMetres(Math.Min(Length.Max, focalDistance.Metres * speed.MetresPerSecond * time.Seconds / Far(distance)));

    /// <summary>The size of the image near the axis: f·size/s.</summary>
    /// <exception cref="RefusalException">Too near.</exception>
    public static Length Size(Length size, Length distance, Length focalDistance) => Length.FromMetres(focalDistance.Metres * size.Metres / Far(distance));

    /// <summary>How long something may be watched before its image moves by a given length; null where it stands still.</summary>
    public static Duration? StillFor(Length imagePath, MotionSpeed speed, Length distance, Length focalDistance)
        => speed.MetresPerSecond <= 0 || focalDistance.Metres <= 0
            ? null
            : Duration.FromSeconds(Math.Min(Duration.Max, imagePath.Metres * Far(distance) / (focalDistance.Metres * speed.MetresPerSecond)));

    internal static double Far(Length distance) => Guard.Within(distance.Metres, 0.1, Length.Max, "the distance", "m");
}
