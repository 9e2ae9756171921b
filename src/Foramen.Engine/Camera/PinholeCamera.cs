using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// A camera without a lens: a round hole, paper behind it, and how they lie to each other. Immutable; every camera that exists is a possible one.
/// </summary>
public sealed record PinholeCamera
{
    /// <summary>Smallest f-number: below it the hole is no point seen from the paper, and the formulas here do not hold.</summary>
    public const double SmallestFNumber = 8;

    private readonly SheetGeometry geometry;

    private PinholeCamera(string name, Hole hole, Length focalDistance, SheetSize sheet, PaperShape shape, SheetPoint holeOffset, Angle tilt)
    {
        Name = name;
        Hole = hole;
        FocalDistance = focalDistance;
        Sheet = sheet;
        Shape = shape;
        HoleOffset = holeOffset;
        Tilt = tilt;
        geometry = new SheetGeometry(
            focalDistance.Millimetres, shape.WallRadius?.Millimetres, holeOffset.XMillimetres, holeOffset.YMillimetres);
    }

    /// <summary>What its owner calls it.</summary>
    public string Name { get; }

    /// <summary>The hole.</summary>
    public Hole Hole { get; }

    /// <summary>From the hole to the paper along the hole's axis.</summary>
    public Length FocalDistance { get; }

    /// <summary>Standard deviation of the focal distance over itself, 0 to 0.5; nothing where nobody has said. Light goes with its square.</summary>
    public double FocalDistanceRelativeSd { get; private init; }

    /// <summary>The picture area of the sheet as it lies in the camera.</summary>
    public SheetSize Sheet { get; }

    /// <summary>Flat or curved.</summary>
    public PaperShape Shape { get; }

    /// <summary>
    /// Where the hole's axis meets the sheet, from the sheet's middle, as the finished picture is looked at. The image is upside down in the camera:
    /// a hole raised in the box's front is a negative y here, and brings in more sky.
    /// </summary>
    public SheetPoint HoleOffset { get; }

    /// <summary>How far the hole's axis points above the horizontal.</summary>
    public Angle Tilt { get; }

    /// <summary>f-number on the axis.</summary>
    public FNumber FNumber => FNumber.FromHole(Hole.Diameter, FocalDistance);

    /// <summary>The geometry for loops over pixels.</summary>
    internal SheetGeometry Geometry => geometry;

    /// <summary>A camera.</summary>
    /// <param name="name">What its owner calls it.</param>
    /// <param name="hole">The hole.</param>
    /// <param name="focalDistance">From the hole to the paper along the axis: 3 mm to 20 m, and at least eight times the diameter.</param>
    /// <param name="sheet">The picture area.</param>
    /// <param name="shape">Flat where missing.</param>
    /// <param name="holeOffset">Where the hole's axis meets the sheet, from its middle.</param>
    /// <param name="tilt">Above the horizontal, within ± 90 degrees.</param>
    /// <exception cref="RefusalException">No such camera can be built; the sentence says why.</exception>
    public static PinholeCamera Create(
        string name, Hole hole, Length focalDistance, SheetSize sheet, PaperShape? shape = null, SheetPoint holeOffset = default, Angle tilt = default)
    {
        var paper = shape ?? PaperShape.Flat;
        var focal = Guard.Within(focalDistance.Millimetres, 3, 20_000, "the distance from the hole to the paper", "mm");
        Guard.Within(tilt.Degrees, -90, 90, "the camera's tilt", "°");
        if (sheet.Width.Metres <= 0 || sheet.Height.Metres <= 0)
        {
            throw new RefusalException("The sheet has no size; give its width and height, such as 102x127 mm.");
        }

        if (focal < SmallestFNumber * hole.Diameter.Millimetres)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"The hole of {hole.Diameter.Millimetres:0.###} mm is too large for paper {focal:0.##} mm behind it; it should be {focal / SmallestFNumber:0.###} mm or less."));
        }

        var (halfWidth, halfHeight) = (sheet.Width.Millimetres / 2, sheet.Height.Millimetres / 2);
        var (footX, footY) = (Math.Abs(holeOffset.XMillimetres), Math.Abs(holeOffset.YMillimetres));
        if (footX > 2 * halfWidth || footY > 2 * halfHeight)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"The hole is {footX:0.#} mm beside and {footY:0.#} mm above or below the middle of a sheet of {sheet}; shift it by no more than the sheet's own size."));
        }

        if (paper.WallRadius is { } radius)
        {
            CheckCurve(focal, radius.Millimetres, halfWidth, footX);
        }

        return new PinholeCamera(string.IsNullOrWhiteSpace(name) ? "unnamed camera" : name.Trim(), hole, focalDistance, sheet, paper, holeOffset, tilt);
    }

    /// <summary>The same camera pointed elsewhere.</summary>
    /// <exception cref="RefusalException">Beyond ± 90 degrees.</exception>
    public PinholeCamera TiltedTo(Angle tilt) => Create(Name, Hole, FocalDistance, Sheet, Shape, HoleOffset, tilt) with { FocalDistanceRelativeSd = FocalDistanceRelativeSd };

    /// <summary>The same camera, its focal distance known this well.</summary>
    /// <param name="relativeSd">0 to 0.5.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public PinholeCamera WithFocalDistanceSpread(double relativeSd)
        => this with { FocalDistanceRelativeSd = Guard.Within(relativeSd, 0, 0.5, "the relative spread of the focal distance") };

    /// <summary>The same camera with another hole.</summary>
    /// <exception cref="RefusalException">Too large a hole.</exception>
    public PinholeCamera WithHole(Hole hole) => Create(Name, hole, FocalDistance, Sheet, Shape, HoleOffset, Tilt) with { FocalDistanceRelativeSd = FocalDistanceRelativeSd };

    /// <summary>The direction that a point of the sheet looks out to.</summary>
    public CameraDirection DirectionOf(SheetPoint point)
    {
        var (x, y, z) = geometry.Ray(point.XMillimetres, point.YMillimetres);
        return CameraDirection.FromVector(x, y, z);
    }

    /// <summary>The point of the sheet that looks out to a direction; null if it falls beside the picture area.</summary>
    public SheetPoint? PointOf(CameraDirection direction)
        => geometry.PointOf(direction.X, direction.Y, direction.Z) is { } p
            && Math.Abs(p.X) <= Sheet.Width.Millimetres / 2 && Math.Abs(p.Y) <= Sheet.Height.Millimetres / 2
            ? SheetPoint.FromMillimetres(p.X, p.Y)
            : null;

    /// <summary>The angles the sheet sees.</summary>
    public FieldAngles Field()
    {
        var (x, y) = (Sheet.Width.Millimetres / 2, Sheet.Height.Millimetres / 2);
        CameraDirection At(double px, double py) => DirectionOf(SheetPoint.FromMillimetres(px, py));
        var horizontal = At(x, HoleOffset.YMillimetres).Azimuth.Degrees - At(-x, HoleOffset.YMillimetres).Azimuth.Degrees;
        var vertical = At(HoleOffset.XMillimetres, y).Elevation.Degrees - At(HoleOffset.XMillimetres, -y).Elevation.Degrees;
        var diagonal = Math.Max(At(x, y).AngleTo(At(-x, -y)).Degrees, At(-x, y).AngleTo(At(x, -y)).Degrees);
        return new FieldAngles(Angle.FromDegrees(horizontal), Angle.FromDegrees(vertical), Angle.FromDegrees(diagonal));
    }

    /// <summary>
    /// Light on the paper from an evenly bright subject: E = L · hole's area · cos θ at the hole · cos θ at the paper / r², times the part of the
    /// opening that a thick edge leaves. On the axis that is πL/(4N²); on flat paper it falls as cos⁴ θ. Any textbook of radiometry.
    /// </summary>
    /// <param name="luminance">Luminance of what the point looks at.</param>
    /// <param name="point">A point of the sheet's surface.</param>
    public Illuminance ImageIlluminance(Luminance luminance, SheetPoint point)
        => Illuminance.FromLux(luminance.CandelasPerSquareMetre * AxisFactor * RelativeIlluminance(point.XMillimetres, point.YMillimetres));

    /// <summary>How much less light than on the hole's axis falls on a point, in stops; negative. -60 where there is none.</summary>
    public Stops FalloffStops(SheetPoint point)
        => Stops.FromRatio(Math.Max(RelativeIlluminance(point.XMillimetres, point.YMillimetres), Math.Pow(2, Stops.Min)));

    /// <summary>Illuminance on the axis for a luminance of 1 cd/m²: the solid angle of the hole, π/(4N²).</summary>
    internal double AxisFactor => Hole.AreaSquareMillimetres / (FocalDistance.Millimetres * FocalDistance.Millimetres);

    /// <summary>Light on a point over that on the axis, 0 to about 1.</summary>
    internal double RelativeIlluminance(double xMillimetres, double yMillimetres)
    {
        var (x, y, z) = geometry.Ray(xMillimetres, yMillimetres);
        if (z <= 0)
        {
            return 0;
        }

        var across = (x * x) + (y * y);
        var squared = across + (z * z);
        var focal = FocalDistance.Millimetres;
        return focal * focal * z * geometry.PaperCosineTimesLength(xMillimetres) / (squared * squared) * Hole.OpenPart(Math.Sqrt(across) / z);
    }

    private static void CheckCurve(double focal, double radius, double halfWidth, double foot)
    {
        if (focal > 2 * radius)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"Paper on a wall of {radius:0.#} mm radius cannot be {focal:0.#} mm from a hole in the wall opposite; the distance should be {2 * radius:0.#} mm or less."));
        }

        // Beyond this arc the paper lies beside or behind the hole, or laps over itself.
        var behind = focal >= 2 * radius ? Math.PI : Math.Acos(Math.Clamp(1 - (focal / radius), -1, 1));
        var widest = 2 * ((Math.Min(behind, Math.PI) * radius) - foot);
        if (2 * halfWidth > widest * 0.999)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"A sheet {2 * halfWidth:0.#} mm long along a wall of {radius:0.#} mm radius would reach beside or behind the hole; it should be {Math.Max(0, widest * 0.999):0.#} mm or less."));
        }
    }
}
