namespace Foramen.Engine.Scene;

/// <summary>
/// A point, read over a small disc: one per cent of the photograph's width across and three pixels at least. Its reading is the disc's
/// median, so that a glint or a twig does not speak for the surface; it is only a bound once half the disc is clipped.
/// </summary>
/// <param name="Position">The middle of the disc.</param>
public sealed record PointInPhotograph(PhotographPosition Position) : PhotographArea
{
    /// <summary>The disc's diameter in widths of the photograph.</summary>
    public const double DiameterOfWidth = 0.01;

    /// <inheritdoc/>
    public override PhotographPosition Middle => Position;

    internal override bool ByMedian => true;

    /// <summary>A point by its fractions from the left and from the top.</summary>
    /// <exception cref="Quantities.RefusalException">Outside the photograph.</exception>
    public static PointInPhotograph FromFractions(double x, double y) => new(PhotographPosition.FromFractions(x, y));

    internal override void ForEachRun(int width, int height, Action<int, int, int> rowFromTo)
    {
        var radius = Math.Max(1.5, DiameterOfWidth * width / 2);

        // The pixel that the point lies on is the disc's middle, so that the disc is never empty.
        var middleColumn = Math.Min((int)(Position.X * width), width - 1);
        var middleRow = Math.Min((int)(Position.Y * height), height - 1);
        for (var row = Math.Max(0, middleRow - (int)radius); row <= Math.Min(height - 1, middleRow + (int)radius); row++)
        {
            var half = (int)Math.Sqrt((radius * radius) - ((row - middleRow) * (row - middleRow)));
            rowFromTo(row, Math.Max(0, middleColumn - half), Math.Min(width, middleColumn + half + 1));
        }
    }
}
