using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// Framing without a photograph: whether an upright subject straight ahead fits on the sheet, where to stand, how far to tilt. Central projection
/// in the upright plane through the hole's axis; any textbook of perspective. Immutable.
/// </summary>
/// <remarks>The ground between is not looked at, nor the subject's width.</remarks>
public sealed class Framing
{
    // Beyond this from the axis nothing is drawn; a place there counts as if it were here.
    private const double Widest = 89.9 * Math.PI / 180;
    private const double FarthestMillimetres = 40_000;

    private readonly SheetGeometry geometry;
    private readonly bool onItsSide;
    private readonly double height;
    private readonly double width;
    private readonly double foot;

    private Framing(PinholeCamera camera, SheetFormat format, bool onItsSide)
    {
        Camera = camera;
        Format = format;
        this.onItsSide = onItsSide;
        geometry = camera.Geometry;
        (width, height) = (camera.Sheet.Width.Millimetres, camera.Sheet.Height.Millimetres);
        foot = camera.HoleOffset.YMillimetres;
        if (onItsSide)
        {
            (width, height) = (height, width);
            foot = camera.HoleOffset.XMillimetres;
        }
    }

    /// <summary>The camera; its own tilt is not used.</summary>
    public PinholeCamera Camera { get; }

    /// <summary>How the sheet stands.</summary>
    public SheetFormat Format { get; }

    /// <summary>Framing with a camera.</summary>
    /// <param name="camera">The camera; its own tilt is not used.</param>
    /// <param name="format">Upright or level; as the sheet lies in the camera where missing.</param>
    public static Framing With(PinholeCamera camera, SheetFormat? format = null)
    {
        var (width, height) = (camera.Sheet.Width, camera.Sheet.Height);
        var natural = width > height ? SheetFormat.Level : width < height ? SheetFormat.Upright : format ?? SheetFormat.Level;
        var wanted = format ?? natural;
        return new Framing(camera, wanted, wanted != natural);
    }

    /// <summary>How the subject lies on the sheet.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="tilt">The camera's tilt, within ± 89 degrees.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public FramingFit Fit(FramingSubject subject, Angle tilt)
    {
        Guard.Within(tilt.Degrees, -89, 89, "the camera's tilt", "°");
        var (low, high) = (subject.BaseElevation.Radians, subject.TopElevation.Radians);
        var lean = Camera.Shape.WallRadius is null
            ? Angle.FromRadians(Math.Atan(width / 2 * Math.Tan(tilt.Radians) / (Camera.FocalDistance.Millimetres + (foot * Math.Tan(tilt.Radians)))))
            : (Angle?)null;
        return new FramingFit(
            tilt,
            0.5 - (PlaceOf(high - tilt.Radians) / height),
            0.5 + (PlaceOf(low - tilt.Radians) / height),
            StripWidth(high, tilt.Radians) / StripWidth(low, tilt.Radians),
            lean);
    }

    /// <summary>The tilt that leaves as much room above as below, within ± 89 degrees.</summary>
    public Angle CentringTilt(FramingSubject subject)
    {
        var (low, high) = (subject.BaseElevation.Radians, subject.TopElevation.Radians);
        var (from, to) = (Math.Max(-89 * Math.PI / 180, high - Widest), Math.Min(89 * Math.PI / 180, low + Widest));
        if (from >= to)
        {
            return Angle.FromRadians(Math.Clamp((low + high) / 2, -89 * Math.PI / 180, 89 * Math.PI / 180));
        }

        // Tilting up moves both places down: their sum falls steadily.
        for (var i = 0; i < 60; i++)
        {
            var middle = (from + to) / 2;
            (from, to) = PlaceOf(low - middle) + PlaceOf(high - middle) > 0 ? (middle, to) : (from, middle);
        }

        return Angle.FromRadians((from + to) / 2);
    }

    /// <summary>The nearest distance at which the whole subject lies on the sheet of a level camera; null where it does at none.</summary>
    /// <param name="subject">The subject; its own distance is not used.</param>
    /// <param name="margin">Room wanted above and below over the picture's height, 0 to 0.45.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public Length? NearestLevel(FramingSubject subject, double margin = 0)
    {
        var reach = Reach(margin);
        var (lowest, highest) = (AngleAt(-reach), AngleAt(reach));

        // Top: top/D ≤ tan(highest); base: base/D ≥ tan(lowest). Each is a nearest or a farthest distance.
        var (nearest, farthest) = (0.0, double.PositiveInfinity);
        Limit(subject.TopMetres, highest);
        Limit(-subject.BaseMetres, -lowest);
        return nearest <= farthest && nearest < Length.Max ? Length.FromMetres(nearest) : null;

        void Limit(double metres, double angle)
        {
            if (angle >= Math.PI / 2)
            {
                return;
            }

            if (angle <= -Math.PI / 2)
            {
                farthest = -1;
                return;
            }

            var tangent = Math.Tan(angle);
            if (metres > 0)
            {
                nearest = Math.Max(nearest, tangent > 0 ? metres / tangent : double.PositiveInfinity);
            }
            else if (tangent < 0)
            {
                farthest = Math.Min(farthest, metres / tangent);
            }
        }
    }

    /// <summary>
    /// The distance from which on, and at any greater one, the whole subject lies on the sheet if the camera is tilted to centre it; zero where it
    /// fits from anywhere. The angle A that the sheet sees holds a subject from b to b + h at D where D² − h·D·cot A + b(b + h) ≥ 0.
    /// </summary>
    /// <param name="subject">The subject; its own distance is not used.</param>
    /// <param name="margin">Room wanted above and below over the picture's height, 0 to 0.45.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public Length NearestTilted(FramingSubject subject, double margin = 0)
    {
        var reach = Reach(margin);
        var seen = AngleAt(reach) - AngleAt(-reach);
        if (seen >= Math.PI)
        {
            return Length.FromMetres(0);
        }

        var half = subject.Height.Metres / Math.Tan(seen) / 2;
        var under = (half * half) - (subject.BaseMetres * subject.TopMetres);
        return Length.FromMetres(under < 0 ? 0 : Math.Max(0, half + Math.Sqrt(under)));
    }

    private double Reach(double margin) => height * (0.5 - Guard.Within(margin, 0, 0.45, "the margin"));

    // Up the picture from its middle, mm, of what lies so far above the axis.
    private double PlaceOf(double angle)
    {
        var (s, c) = Math.SinCos(Math.Clamp(angle, -Widest, Widest));
        var place = onItsSide ? geometry.PointOf(s, 0, c)?.X : geometry.PointOf(0, s, c)?.Y;
        return Math.Clamp(place ?? Math.Sign(angle) * FarthestMillimetres, -FarthestMillimetres, FarthestMillimetres);
    }

    // The angle above the axis that a place up the picture looks out to.
    private double AngleAt(double place)
    {
        if (onItsSide)
        {
            var (x, _, z) = geometry.Ray(place, Camera.HoleOffset.YMillimetres);
            return Math.Atan2(x, z);
        }

        var (_, y, depth) = geometry.Ray(Camera.HoleOffset.XMillimetres, place);
        return Math.Atan2(y, depth);
    }

    // Width as drawn of a strip a ten-thousandth of the distance wide, at an elevation on an upright wall at distance one.
    private double StripWidth(double elevation, double tilt)
    {
        const double Strip = 1e-4;
        var away = 1 / Math.Cos(elevation);
        var (s, c) = Math.SinCos(Math.Clamp(elevation - tilt, -Widest, Widest));
        var drawn = onItsSide
            ? geometry.PointOf(away * s, -Strip, away * c)?.Y - Camera.HoleOffset.YMillimetres
            : geometry.PointOf(Strip, away * s, away * c)?.X - Camera.HoleOffset.XMillimetres;
        return Math.Abs(drawn ?? double.NaN);
    }
}
