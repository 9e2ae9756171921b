using Foramen.Engine.Scene;

namespace Foramen.Engine.Camera;

/// <summary>
/// Which part of a photograph each point of the sheet sees, when both were taken from the same place. Where the photograph does not reach, the
/// answer is null: unknown, never invented. Immutable.
/// </summary>
/// <remarks>
/// The photograph must be straight-lined with its axis in the middle. Subjects so near that the two openings see them from different places
/// are shifted against the background; that is not modelled.
/// </remarks>
public sealed class SheetProjection
{
    private readonly AxesTurn turn;
    private readonly SheetGeometry geometry;
    private readonly bool onItsSide;

    private SheetProjection(PinholeCamera camera, PhotographField photograph, SheetFormat format, SheetAim aim, bool onItsSide)
    {
        Camera = camera;
        Photograph = photograph;
        Format = format;
        Aim = aim;
        this.onItsSide = onItsSide;
        geometry = camera.Geometry;
        turn = AxesTurn.Between(camera.Tilt, aim.Pan, aim.PhotographTilt);
        PictureSize = onItsSide ? SheetSize.FromLengths(camera.Sheet.Height, camera.Sheet.Width) : camera.Sheet;
    }

    /// <summary>The camera, with its tilt.</summary>
    public PinholeCamera Camera { get; }

    /// <summary>What the photograph covers.</summary>
    public PhotographField Photograph { get; }

    /// <summary>How the sheet stands in the picture.</summary>
    public SheetFormat Format { get; }

    /// <summary>Where the camera points against the photograph.</summary>
    public SheetAim Aim { get; }

    /// <summary>The picture area as the finished picture is looked at; width and height change places where the camera lies on its side.</summary>
    public SheetSize PictureSize { get; }

    /// <summary>A projection.</summary>
    /// <param name="camera">The camera, with its tilt.</param>
    /// <param name="photograph">What the photograph covers.</param>
    /// <param name="format">Upright or level; as the sheet lies in the camera where missing. For the other one the camera is turned a quarter to the left.</param>
    /// <param name="aim">Where the camera points against the photograph; along its axis where missing.</param>
    public static SheetProjection Of(PinholeCamera camera, PhotographField photograph, SheetFormat? format = null, SheetAim aim = default)
    {
        var (width, height) = (camera.Sheet.Width, camera.Sheet.Height);
        var natural = width > height ? SheetFormat.Level : width < height ? SheetFormat.Upright : format ?? SheetFormat.Level;
        var wanted = format ?? natural;
        return new SheetProjection(camera, photograph, wanted, aim, wanted != natural);
    }

    /// <summary>The point of the camera's sheet that lies at a place of the finished picture, in the camera's own x and y.</summary>
    /// <param name="picture">From the picture's middle, right and up as it is looked at.</param>
    public SheetPoint SheetPointAt(SheetPoint picture)
    {
        var (x, y) = ToSheet(picture.XMillimetres, picture.YMillimetres);
        return SheetPoint.FromMillimetres(x, y);
    }

    /// <summary>The place of the finished picture where a point of the camera's sheet lies.</summary>
    public SheetPoint PicturePointAt(SheetPoint sheet)
        => onItsSide ? SheetPoint.FromMillimetres(-sheet.YMillimetres, sheet.XMillimetres) : sheet;

    /// <summary>The place in the photograph that a point of the sheet sees; null where the photograph does not reach.</summary>
    /// <param name="sheet">In the camera's own x and y.</param>
    public PhotographPosition? PositionOf(SheetPoint sheet)
    {
        var picture = PicturePointAt(sheet);
        return Locate(picture.XMillimetres, picture.YMillimetres, out var x, out var y) && x is >= 0 and <= 1 && y is >= 0 and <= 1
            ? PhotographPosition.FromFractions(x, y)
            : null;
    }

    /// <summary>The point of the sheet that sees a place in the photograph; null if it falls beside the picture area.</summary>
    public SheetPoint? PointOf(PhotographPosition position)
    {
        var (right, up) = Photograph.DirectionOf(position);
        var (x, y, z) = turn.Undo(right, up, 1);
        var (ownX, ownY) = onItsSide ? (y, -x) : (x, y);
        return Camera.PointOf(CameraDirection.FromVector(ownX, ownY, z));
    }

    /// <summary>
    /// The place of the finished picture that a place in the photograph falls on, beyond the picture's edges too; null where the sheet's surface,
    /// carried on, is not met within 50 m.
    /// </summary>
    public SheetPoint? PicturePlaceOf(PhotographPosition position)
    {
        var (right, up) = Photograph.DirectionOf(position);
        var (x, y, z) = turn.Undo(right, up, 1);
        var found = onItsSide ? geometry.PointOf(y, -x, z) : geometry.PointOf(x, y, z);
        return found is { } p && Math.Abs(p.X) <= SheetPoint.MaxMillimetres && Math.Abs(p.Y) <= SheetPoint.MaxMillimetres
            ? PicturePointAt(SheetPoint.FromMillimetres(p.X, p.Y))
            : null;
    }

    /// <summary>Pixels of the photograph that fall on a millimetre of the picture's middle, along its finest direction.</summary>
    public double PhotographPixelsPerMillimetre()
    {
        const double Step = 0.05;
        var (x, y) = onItsSide ? (-Camera.HoleOffset.YMillimetres, Camera.HoleOffset.XMillimetres) : (Camera.HoleOffset.XMillimetres, Camera.HoleOffset.YMillimetres);
        if (!Locate(x, y, out var fromX, out var fromY) || !Locate(x + Step, y, out var rightX, out var rightY) || !Locate(x, y + Step, out var upX, out var upY))
        {
            return 0;
        }

        double Pixels(double dx, double dy) => double.Hypot(dx * Photograph.Width, dy * Photograph.Height) / Step;
        return Math.Min(Pixels(rightX - fromX, rightY - fromY), Pixels(upX - fromX, upY - fromY));
    }

    /// <summary>As <see cref="PositionOf"/> from a place of the picture in mm, in fractions that may lie outside the photograph.</summary>
    /// <returns>False where the point looks out behind the photograph's plane.</returns>
    internal bool Locate(double pictureX, double pictureY, out double x, out double y)
    {
        var (sheetX, sheetY) = ToSheet(pictureX, pictureY);
        var (rayX, rayY, rayZ) = geometry.Ray(sheetX, sheetY);
        var (right, up, forward) = onItsSide ? turn.Apply(-rayY, rayX, rayZ) : turn.Apply(rayX, rayY, rayZ);
        if (rayZ <= 0 || forward <= 0)
        {
            (x, y) = (0, 0);
            return false;
        }

        (x, y) = Photograph.Locate(right / forward, up / forward);
        return true;
    }

    /// <summary>Light at a place of the picture in mm over that on the hole's axis.</summary>
    internal double RelativeIlluminance(double pictureX, double pictureY)
    {
        var (x, y) = ToSheet(pictureX, pictureY);
        return Camera.RelativeIlluminance(x, y);
    }

    private (double X, double Y) ToSheet(double pictureX, double pictureY) => onItsSide ? (pictureY, -pictureX) : (pictureX, pictureY);
}
