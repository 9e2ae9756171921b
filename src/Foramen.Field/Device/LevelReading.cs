using Foramen.Engine.Quantities;

namespace Foramen.Field.Device;

/// <summary>How an upright phone is held.</summary>
/// <param name="TiltDegrees">Where its back camera looks: positive is up, −90 to 90.</param>
/// <param name="RollDegrees">How far it is turned clockwise from upright, as its holder sees it, −180 to 180.</param>
public readonly record struct LevelReading(double TiltDegrees, double RollDegrees)
{
    /// <summary>
    /// From the angles of a deviceorientation event. The event turns a device lying flat (screen up) about z by alpha, about x by beta and about y by
    /// gamma (W3C DeviceOrientation Event, section 4.1, order Z-X'-Y''); seen from the device, up is then (−cos β sin γ, sin β, cos β cos γ).
    /// </summary>
    /// <param name="betaDegrees">Beta, −180 to 180.</param>
    /// <param name="gammaDegrees">Gamma, −90 to 90.</param>
    public static LevelReading FromOrientation(double betaDegrees, double gammaDegrees)
    {
        var beta = double.DegreesToRadians(Guard.Within(betaDegrees, -180, 180, "beta", "degrees"));
        var gamma = double.DegreesToRadians(Guard.Within(gammaDegrees, -90, 90, "gamma", "degrees"));
        var x = -Math.Cos(beta) * Math.Sin(gamma);
        var y = Math.Sin(beta);
        var z = Math.Cos(beta) * Math.Cos(gamma);
        // The back camera looks along −z of the device.
        return new LevelReading(double.RadiansToDegrees(Math.Asin(Math.Clamp(-z, -1, 1))), double.RadiansToDegrees(Math.Atan2(-x, y)));
    }
}
