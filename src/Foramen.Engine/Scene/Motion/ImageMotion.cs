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

    /// <summary>How far the image of something endlessly far goes when its direction turns in a plane through the axis: f·(tan θ₂ − tan θ₁).</summary>
    /// <param name="focalDistance">From the hole to flat paper.</param>
    /// <param name="from">From the hole's axis, −80° to 80°.</param>
    /// <param name="to">As <paramref name="from"/>.</param>
    /// <exception cref="RefusalException">Farther off the axis.</exception>
    public static Length Path(Length focalDistance, Angle from, Angle to)
        => Length.FromMetres(focalDistance.Metres * Math.Abs(Math.Tan(OffAxis(to)) - Math.Tan(OffAxis(from))));

    /// <summary>How long something may be watched before its image moves by a given length; null where it stands still.</summary>
    public static Duration? StillFor(Length imagePath, MotionSpeed speed, Length distance, Length focalDistance)
        => speed.MetresPerSecond <= 0 || focalDistance.Metres <= 0
            ? null
            : Duration.FromSeconds(Math.Min(Duration.Max, imagePath.Metres * Far(distance) / (focalDistance.Metres * speed.MetresPerSecond)));

    internal static double Far(Length distance) => Guard.Within(distance.Metres, 0.1, Length.Max, "the distance", "m");

    private static double OffAxis(Angle angle) => double.DegreesToRadians(Guard.Within(angle.Degrees, -80, 80, "the angle from the hole’s axis", "°"));
}
