using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Foramen.Engine.Camera;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>
/// A mesh of exact places, one for every few pixels of the sheet, between which places in the photograph and falloff are interpolated. The cells
/// the photograph's edge runs through, and those in which a thick edge of the hole bends the falloff, are computed pixel by pixel.
/// </summary>
/// <remarks>
/// A cell spans a sixtieth of a radian at most. Its chord strays from a curve by less than a part in 7000 of the focal length in pixels up to forty-five
/// degrees off the axis, and the falloff by less than 0.001 stop.
/// </remarks>
internal sealed class SheetMesh
{
    // A cell is no wider than this part of the focal distance or the wall's radius, and no wider than some pixels.
    private const double WidestCell = 1 / 60.0;
    private const int MostPixelsInCell = 16;

    // Of the light in a cell's corners, how far its middle may stray from straight. cos⁴ alone strays by less than a third of that.
    private const float MostBent = 0.001f;

    // Pixels sampled at a time; cells are a whole number of them unless they are smaller.
    private const int Lanes = 4;

    private readonly SheetProjection projection;
    private readonly SheetGrid grid;
    private readonly int margin;
    private readonly int sourceWidth;
    private readonly int sourceHeight;
    private readonly int cell;
    private readonly int columns;
    private readonly Node[] nodes;
    private readonly float axis;
    private readonly MapReader reads;

    // By cell, with the index of its upper left node; null where no edge is thick.
    private readonly bool[]? bent;

    /// <summary>Computes the mesh.</summary>
    /// <param name="projection">Where points of the sheet look.</param>
    /// <param name="grid">The picture's pixels.</param>
    /// <param name="margin">Pixels to add on every side.</param>
    /// <param name="sourceWidth">Columns of the photograph's map.</param>
    /// <param name="sourceHeight">Rows of the photograph's map.</param>
    /// <param name="cancellation">Stops within some rows' time.</param>
    public SheetMesh(SheetProjection projection, SheetGrid grid, int margin, int sourceWidth, int sourceHeight, CancellationToken cancellation)
    {
        this.projection = projection;
        this.grid = grid;
        this.margin = margin;
        this.sourceWidth = sourceWidth;
        this.sourceHeight = sourceHeight;
        axis = (float)projection.Camera.AxisFactor;
        reads = new MapReader(sourceWidth, sourceHeight);
        Width = grid.Width + (2 * margin);
        Height = grid.Height + (2 * margin);
        var camera = projection.Camera;
        var shortest = Math.Min(camera.FocalDistance.Millimetres, camera.Shape.WallRadius?.Millimetres ?? double.MaxValue);
        cell = (int)Math.Clamp(shortest * WidestCell / grid.PitchMillimetres, 1, MostPixelsInCell);
        cell = cell >= Lanes ? cell / Lanes * Lanes : cell;
        columns = (Width / cell) + 2;
        var rows = (Height / cell) + 2;
        nodes = new Node[columns * rows];
        RowWork.Run(
            rows,
            16,
            (from, to) =>
            {
                for (var row = from; row < to; row++)
                {
                    for (var column = 0; column < columns; column++)
                    {
                        nodes[(row * columns) + column] = At(column * cell, row * cell);
                    }
                }
            },
            null,
            cancellation);
        bent = camera.Hole.EdgeThickness.Millimetres > 0 ? Bent(rows) : null;
    }

    /// <summary>Columns, margins included.</summary>
    public int Width { get; }

    /// <summary>Rows, margins included.</summary>
    public int Height { get; }

    /// <summary>Fills a plane with the illuminance of a perfectly sharp image, in lux, and flags with 1 where it is known.</summary>
    /// <returns>Whether all of it is known.</returns>
    public bool Fill(ReadOnlyMemory<float> source, Memory<float> plane, Memory<byte> flags, Action<double>? progress, CancellationToken cancellation)
    {
        var unknown = 0;
        RowWork.Run(
            Height,
            32,
            (from, to) =>
            {
                var missing = 0;
                for (var row = from; row < to; row++)
                {
                    missing += FillRow(row, source.Span, plane.Span.Slice(row * Width, Width), flags.Span.Slice(row * Width, Width));
                }

                Interlocked.Add(ref unknown, missing);
            },
            progress,
            cancellation);
        return unknown == 0;
    }

    /// <summary>Light over that on the axis, for a row of the picture without its margin.</summary>
    public void ReadFalloff(int row, Span<float> into)
    {
        var (line, down) = Math.DivRem(row + margin, cell);
        var part = down / (float)cell;
        for (var column = 0; column < into.Length;)
        {
            var (place, across) = Math.DivRem(column + margin, cell);
            var index = (line * columns) + place;
            if (bent is not null && bent[index])
            {
                for (; across < cell && column < into.Length; across++, column++)
                {
                    into[column] = LightAt(column + margin, row + margin) / axis;
                }

                continue;
            }

            var left = Mix(nodes[index].Light, nodes[index + columns].Light, part) / axis;
            var step = ((Mix(nodes[index + 1].Light, nodes[index + 1 + columns].Light, part) / axis) - left) / cell;
            for (; across < cell && column < into.Length; across++, column++)
            {
                into[column] = left + (across * step);
            }
        }
    }

    private static float Mix(float from, float to, float part) => from + ((to - from) * part);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int FillRow(int row, ReadOnlySpan<float> source, Span<float> plane, Span<byte> flags)
    {
        var (line, down) = Math.DivRem(row, cell);
        var part = down / (float)cell;
        var unknown = 0;
        for (var column = 0; column < Width; column += cell)
        {
            var above = (line * columns) + (column / cell);
            var below = above + columns;
            var count = Math.Min(cell, Width - column);
            var into = plane.Slice(column, count);
            var known = 0;
            var outside = nodes[above].Outside & nodes[above + 1].Outside & nodes[below].Outside & nodes[below + 1].Outside;
            var anyOutside = nodes[above].Outside | nodes[above + 1].Outside | nodes[below].Outside | nodes[below + 1].Outside;
            if (anyOutside == 0 && (bent is null || !bent[above]))
            {
                FillCell(source, into, Node.Between(nodes[above], nodes[below], part), Node.Between(nodes[above + 1], nodes[below + 1], part));
                flags.Slice(column, count).Fill(1);
                continue;
            }

            if (outside != 0)
            {
                into.Clear();
                flags.Slice(column, count).Clear();
            }
            else
            {
                known = FillExactly(row, column, source, into, flags.Slice(column, count));
            }

            unknown += count - known;
        }

        return unknown;
    }

    // A thick edge puts a peak on the axis and cuts the light off at some angle; between corners on either side of those falloff is not straight.
    private bool[] Bent(int rows)
    {
        var found = new bool[nodes.Length];
        for (var row = 0; row < rows - 1; row++)
        {
            for (var column = 0; column < columns - 1; column++)
            {
                var index = (row * columns) + column;
                var (a, b, c, d) = (nodes[index].Light, nodes[index + 1].Light, nodes[index + columns].Light, nodes[index + columns + 1].Light);
                var middle = LightAt((column + 0.5) * cell, (row + 0.5) * cell);
                found[index] = Math.Abs(middle - ((a + b + c + d) / 4)) > MostBent * Math.Max(Math.Max(a, b), Math.Max(c, d));
            }
        }

        return found;
    }

    private float LightAt(double column, double row)
        => (float)(projection.RelativeIlluminance(grid.XMillimetres(column - margin), grid.YMillimetres(row - margin)) * axis);

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void FillCell(ReadOnlySpan<float> source, Span<float> into, Node left, Node right)
    {
        var (stepX, stepY, stepLight) = ((right.X - left.X) / cell, (right.Y - left.Y) / cell, (right.Light - left.Light) / cell);
        var i = 0;
        for (; i + Lanes <= into.Length; i += Lanes)
        {
            var place = Vector128.Create(0f, 1, 2, 3) + Vector128.Create((float)i);
            var light = Vector128.Create(left.Light) + (place * stepLight);
            var values = reads.Sample4(source, Vector128.Create(left.X) + (place * stepX), Vector128.Create(left.Y) + (place * stepY));
            (light * values).StoreUnsafe(ref into[i]);
        }

        for (; i < into.Length; i++)
        {
            into[i] = (left.Light + (i * stepLight)) * reads.Sample(source, left.X + (i * stepX), left.Y + (i * stepY));
        }
    }

    private int FillExactly(int row, int column, ReadOnlySpan<float> source, Span<float> into, Span<byte> flags)
    {
        var known = 0;
        for (var i = 0; i < into.Length; i++)
        {
            var node = At(column + i, row);
            var inside = node.Outside == 0;
            into[i] = inside ? node.Light * reads.Sample(source, node.X, node.Y) : 0;
            flags[i] = inside ? (byte)1 : (byte)0;
            known += inside ? 1 : 0;
        }

        return known;
    }

    /// <summary>The exact place of a pixel, counted with margins.</summary>
    private Node At(int column, int row)
    {
        var (x, y) = (grid.XMillimetres(column - margin), grid.YMillimetres(row - margin));
        var light = LightAt(column, row);
        if (!projection.Locate(x, y, out var photoX, out var photoY))
        {
            return new Node(0, 0, light, Node.Behind);
        }

        var outside = (photoX < 0 ? 1 : 0) | (photoX > 1 ? 2 : 0) | (photoY < 0 ? 4 : 0) | (photoY > 1 ? 8 : 0);
        return new Node((float)((photoX * sourceWidth) - 0.5), (float)((photoY * sourceHeight) - 0.5), light, outside);
    }

    /// <summary>A place in the map in pixels, the light there for a luminance of 1 cd/m², and over which edges it lies.</summary>
    private readonly record struct Node(float X, float Y, float Light, int Outside)
    {
        public const int Behind = 16;

        public static Node Between(Node from, Node to, float part)
            => new(Mix(from.X, to.X, part), Mix(from.Y, to.Y, part), Mix(from.Light, to.Light, part), 0);
    }
}
