using Foramen.Engine.Scene;

namespace Foramen.Field.Sheets.Frame;

/// <summary>Rectangles marked on a photograph by a drag or by keys.</summary>
public static class MarkedArea
{
    private const double Least = 0.01;

    /// <summary>Between two opposite corners, in fractions; null where it is too small to be meant.</summary>
    public static RectangleInPhotograph? Between((double X, double Y) from, (double X, double Y) to)
    {
        var (left, right) = Ordered(from.X, to.X);
        var (top, bottom) = Ordered(from.Y, to.Y);
        return right - left >= Least && bottom - top >= Least ? RectangleInPhotograph.FromFractions(left, top, right - left, bottom - top) : null;
    }

    /// <summary>Moved, or its lower right corner moved, by fractions of the photograph; in the middle where there was none.</summary>
    public static RectangleInPhotograph? Nudged(RectangleInPhotograph? now, double x, double y, bool corner)
    {
        if (now is null)
        {
            return Between((0.35, 0.3), (0.65, 0.7));
        }

        var (left, top, right, bottom) = (now.TopLeft.X, now.TopLeft.Y, now.BottomRight.X, now.BottomRight.Y);
        if (corner)
        {
            return Between((left, top), (Math.Max(right + x, left + Least), Math.Max(bottom + y, top + Least))) ?? now;
        }

        (x, y) = (Math.Clamp(x, -left, 1 - right), Math.Clamp(y, -top, 1 - bottom));
        return Between((left + x, top + y), (right + x, bottom + y)) ?? now;
    }

    private static (double From, double To) Ordered(double a, double b)
    {
        (a, b) = (Math.Clamp(a, 0, 1), Math.Clamp(b, 0, 1));
        return a <= b ? (a, b) : (b, a);
    }
}
