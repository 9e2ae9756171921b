namespace Foramen.Engine.Camera;

/// <summary>
/// Where a point of the sheet lies against the hole, on bare millimetres for the loops over pixels. The paper's image is turned by half a
/// circle, so a point at (x, y) of the finished picture looks out along the vector this gives.
/// </summary>
internal readonly struct SheetGeometry(double focal, double? wallRadius, double footX, double footY)
{
    private readonly double radius = wallRadius ?? 0;
    private readonly bool curved = wallRadius is not null;

    /// <summary>The vector from the paper's point through the hole, mm, in camera axes; its length is the distance to the hole.</summary>
    public (double X, double Y, double Z) Ray(double x, double y)
    {
        if (!curved)
        {
            return (x - footX, y - footY, focal);
        }

        var angle = (x - footX) / radius;
        return (radius * Math.Sin(angle), y - footY, focal - (radius * (1 - Math.Cos(angle))));
    }

    /// <summary>Cosine of the angle at which the light falls on the paper, times the ray's length.</summary>
    public double PaperCosineTimesLength(double x)
        => curved ? radius + ((focal - radius) * Math.Cos((x - footX) / radius)) : focal;

    /// <summary>The point of the sheet's surface that looks out along a vector; null if none does.</summary>
    public (double X, double Y)? PointOf(double x, double y, double z)
    {
        if (!curved)
        {
            return z <= 0 ? null : (footX + (focal * x / z), footY + (focal * y / z));
        }

        var flat = (x * x) + (z * z);
        var hole = focal - radius;
        var root = (z * z * hole * hole) - (flat * ((hole * hole) - (radius * radius)));
        if (z <= 0 || root < 0)
        {
            return null;
        }

        var stretch = ((z * hole) + Math.Sqrt(root)) / flat;
        return (footX + (radius * Math.Atan2(stretch * x, (stretch * z) - hole)), footY + (stretch * y));
    }
}
