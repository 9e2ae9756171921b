using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>
/// An upright rectangle, read as a meter would: the mean over all of it. Its reading is 'at least' if any of it is blown, 'at most' if
/// blocked parts make up a tenth of it.
/// </summary>
public sealed record RectangleInPhotograph : PhotographArea
{
    private RectangleInPhotograph(PhotographPosition topLeft, PhotographPosition bottomRight)
    {
        TopLeft = topLeft;
        BottomRight = bottomRight;
    }

    /// <summary>The upper left corner.</summary>
    public PhotographPosition TopLeft { get; }

    /// <summary>The lower right corner.</summary>
    public PhotographPosition BottomRight { get; }

    /// <inheritdoc/>
    public override PhotographPosition Middle
        => PhotographPosition.FromFractions((TopLeft.X + BottomRight.X) / 2, (TopLeft.Y + BottomRight.Y) / 2);

    internal override bool ByMedian => false;

    /// <summary>A rectangle by fractions of the photograph: the left and top edge, the width and the height.</summary>
    /// <exception cref="RefusalException">Any of it lies outside the photograph, or it is empty.</exception>
    public static RectangleInPhotograph FromFractions(double left, double top, double width, double height)
    {
        var topLeft = PhotographPosition.FromFractions(left, top);
        Guard.Within(width, 1e-6, 1, "the rectangle's fraction of the photograph's width");
        Guard.Within(height, 1e-6, 1, "the rectangle's fraction of the photograph's height");

        // Sums such as 0.7 + 0.3 may pass one by the last bit of a double; that is not outside.
        return new RectangleInPhotograph(topLeft, PhotographPosition.FromFractions(SnapToOne(left + width), SnapToOne(top + height)));
    }

    internal override void ForEachRun(int width, int height, Action<int, int, int> rowFromTo)
    {
        var (left, right) = Pixels(TopLeft.X, BottomRight.X, width);
        var (top, bottom) = Pixels(TopLeft.Y, BottomRight.Y, height);
        for (var row = top; row < bottom; row++)
        {
            rowFromTo(row, left, right);
        }
    }

    private static (int From, int To) Pixels(double from, double to, int size)
    {
        var first = Math.Min((int)Math.Round(from * size), size - 1);
        return (first, Math.Clamp((int)Math.Round(to * size), first + 1, size));
    }

    private static double SnapToOne(double value) => value is > 1 and < 1 + 1e-9 ? 1 : value;
}
