using Foramen.Engine.Quantities;

namespace Foramen.Field.Device;

/// <summary>How an upright phone is held.</summary>
/// <param name="TiltDegrees">Where its back camera looks: positive is up, −90 to 90.</param>
/// <param name="RollDegrees">How far it is turned clockwise from upright, as its holder sees it, −180 to 180.</param>
/// <param name="BearingDegrees">Which way its back camera looks, from the compass's north through east, 0 to below 360; null where the device knows no north or looks steeply up or down.</param>
public readonly record struct LevelReading(double TiltDegrees, double RollDegrees, double? BearingDegrees = null)
{
    // Steeper than this the back camera has no bearing that a hand could hold.
    private const double SteepestDegrees = 80;

    /// <summary>
    /// From the angles of a deviceorientation event. The event turns a device lying flat (screen up, top to the north) about z by alpha, about x by beta and
    /// about y by gamma (W3C DeviceOrientation Event, section 4.1, order Z-X'-Y''); seen from the device, up is then (−cos β sin γ, sin β, cos β cos γ), and its
    /// back looks east by −cos α sin γ − sin α sin β cos γ and north by −sin α sin γ + cos α sin β cos γ.
    /// </summary>
    /// <param name="betaDegrees">Beta, −180 to 180.</param>
    /// <param name="gammaDegrees">Gamma, −90 to 90.</param>
    /// <param name="alphaDegrees">Alpha, 0 to 360; null where it is not counted from north.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static LevelReading FromOrientation(double betaDegrees, double gammaDegrees, double? alphaDegrees = null)
    {
        var beta = double.DegreesToRadians(Guard.Within(betaDegrees, -180, 180, "beta", "degrees"));
        var gamma = double.DegreesToRadians(Guard.Within(gammaDegrees, -90, 90, "gamma", "degrees"));
        var x = -Math.Cos(beta) * Math.Sin(gamma);
        var y = Math.Sin(beta);
        var z = Math.Cos(beta) * Math.Cos(gamma);
        // The back camera looks along −z of the device.
        var tilt = double.RadiansToDegrees(Math.Asin(Math.Clamp(-z, -1, 1)));
        double? bearing = null;
        if (alphaDegrees is { } known && Math.Abs(tilt) <= SteepestDegrees)
        {
            var (sin, cos) = Math.SinCos(double.DegreesToRadians(Guard.Within(known, 0, 360, "alpha", "degrees")));
            var (aside, ahead) = (-Math.Sin(gamma), y * Math.Cos(gamma));
            bearing = (double.RadiansToDegrees(Math.Atan2((cos * aside) - (sin * ahead), (sin * aside) + (cos * ahead))) + 360) % 360;
        }

        return new LevelReading(tilt, double.RadiansToDegrees(Math.Atan2(-x, y)), bearing);
    }
}
