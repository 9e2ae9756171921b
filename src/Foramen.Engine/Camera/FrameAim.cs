using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>A camera set up at a place: where its axis points and how the sheet stands. Immutable.</summary>
public sealed class FrameAim
{
    /// <summary>Within this of the picture's edge a place counts as in it: half the sun's disc and a little for aiming. A degree as it lies on the axis; 39° off it is 0.6° of sky.</summary>
    public const double UsualMarginDegrees = 1;

    // What is behind the camera is this far from the picture.
    private const double FarDegrees = 180;

    private readonly SheetGeometry geometry;
    private readonly bool onItsSide;
    private readonly double halfWidth, halfHeight, focal, sinTilt, cosTilt;

    private FrameAim(PinholeCamera camera, Angle bearing, bool onItsSide)
    {
        (Camera, Bearing, this.onItsSide) = (camera, bearing, onItsSide);
        geometry = camera.Geometry;
        (halfWidth, halfHeight) = (camera.Sheet.Width.Millimetres / 2, camera.Sheet.Height.Millimetres / 2);
        focal = camera.FocalDistance.Millimetres;
        (sinTilt, cosTilt) = Math.SinCos(camera.Tilt.Radians);
    }

    /// <summary>The camera, with its tilt.</summary>
    public PinholeCamera Camera { get; }

    /// <summary>Bearing of its axis, from true north through east.</summary>
    public Angle Bearing { get; }

    /// <summary>A camera that points to a bearing.</summary>
    /// <param name="camera">The camera, with its tilt.</param>
    /// <param name="bearing">0° to 360°, from true north.</param>
    /// <param name="format">Upright or level; as the sheet lies in the camera where missing.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static FrameAim Towards(PinholeCamera camera, Angle bearing, SheetFormat? format = null)
    {
        Guard.Within(bearing.Degrees, 0, 360, "the camera's bearing", "°");
        var (width, height) = (camera.Sheet.Width, camera.Sheet.Height);
        var natural = width > height ? SheetFormat.Level : width < height ? SheetFormat.Upright : format ?? SheetFormat.Level;
        return new FrameAim(camera, bearing, (format ?? natural) != natural);
    }

    /// <summary>The direction of a place in the sky, in camera axes as the camera is held.</summary>
    public CameraDirection DirectionTo(SkyPosition position)
    {
        var (x, y, z) = Axes(position);
        return CameraDirection.FromVector(x, y, z);
    }

    /// <summary>The angle between the hole's axis and a place in the sky: under 90° its light falls on the hole.</summary>
    public Angle OffAxis(SkyPosition position) => DirectionTo(position).OffAxis;

    /// <summary>Where it stands against the frame and the facade.</summary>
    /// <param name="position">Of the sun.</param>
    /// <param name="facade">The surface photographed.</param>
    /// <param name="shadeOnFacade">What may hide the sun from the facade.</param>
    /// <param name="shadeOnHole">What may hide the sun from the hole: a hood, a hand, a house.</param>
    public SunStanding Standing(SkyPosition position, Facade facade, IReadOnlyList<Obstacle>? shadeOnFacade = null, IReadOnlyList<Obstacle>? shadeOnHole = null)
    {
        var up = position.Elevation.Degrees > 0;
        var raking = facade.RakingAngle(position);
        var onFacade = up && raking.Degrees > 0 && !Obstacle.AnyHides(shadeOnFacade, position);
        var away = OffAxis(position);
        var inPicture = up && ClearanceDegrees(position) <= UsualMarginDegrees;
        return new SunStanding(position, away, raking, up, inPicture, onFacade, up && away.Degrees < 90 && !Obstacle.AnyHides(shadeOnHole, position));
    }

    /// <summary>How far a place in the sky is outside the picture, degrees seen from the hole, roughly; negative inside.</summary>
    internal double ClearanceDegrees(SkyPosition position)
    {
        var (right, up, forward) = Axes(position);
        if (forward <= 0.01)
        {
            return FarDegrees;
        }

        var point = onItsSide ? geometry.PointOf(up, -right, forward) : geometry.PointOf(right, up, forward);
        return point is { } p
            ? Math.Atan(Math.Max(Math.Abs(p.X) - halfWidth, Math.Abs(p.Y) - halfHeight) / focal) * (180 / Math.PI)
            : FarDegrees;
    }

    /// <summary>Cosine of the angle to the axis.</summary>
    internal double AxisCosine(SkyPosition position) => Axes(position).Z;

    private (double X, double Y, double Z) Axes(SkyPosition position)
    {
        var (sin, cos) = Math.SinCos(position.Elevation.Radians);
        var (aside, ahead) = Math.SinCos(position.Azimuth.Radians - Bearing.Radians);
        ahead *= cos;
        return (cos * aside, (sin * cosTilt) - (ahead * sinTilt), (sin * sinTilt) + (ahead * cosTilt));
    }
}
