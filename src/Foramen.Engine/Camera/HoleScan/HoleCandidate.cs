namespace Foramen.Engine.Camera;

/// <summary>Something in a scan that may be the hole: a region beyond a threshold, with the ellipse of its second moments.</summary>
/// <param name="X">Middle, pixels from the left.</param>
/// <param name="Y">Middle, pixels from the top.</param>
/// <param name="Area">Pixels.</param>
/// <param name="LongAxis">Half of the ellipse's long axis, pixels.</param>
/// <param name="ShortAxis">Half of its short axis, pixels.</param>
/// <param name="Direction">Of the long axis, radians from the right, downwards.</param>
/// <param name="IsBright">Whether it is brighter than what is around it.</param>
/// <param name="TouchesBorder">Whether it reaches the scan's border.</param>
internal readonly record struct HoleCandidate(
    double X, double Y, double Area, double LongAxis, double ShortAxis, double Direction, bool IsBright, bool TouchesBorder)
{
    // Dust and hairs are long, ragged or both; a drilled or pierced hole is neither. Common practice, no source.
    private const double LeastAxisRatio = 0.6;
    private const double LeastFill = 0.9;

    /// <summary>Diameter of the circle with the same area, pixels.</summary>
    public double Diameter => 2 * Math.Sqrt(Area / Math.PI);

    /// <summary>Area over that of the ellipse: one for every ellipse, less for what is ragged or hollow.</summary>
    public double Fill => Area / (Math.PI * LongAxis * ShortAxis);

    /// <summary>Whether it has the shape of a hole.</summary>
    public bool IsRound => ShortAxis >= LeastAxisRatio * LongAxis && Fill >= LeastFill;

    /// <summary>Whether another lies inside it, so that this is the plate and not the hole.</summary>
    public bool Holds(HoleCandidate other)
        => other.Area < Area / 2 && double.Hypot(other.X - X, other.Y - Y) + other.LongAxis < ShortAxis * 1.5 && other.IsBright != IsBright;
}
