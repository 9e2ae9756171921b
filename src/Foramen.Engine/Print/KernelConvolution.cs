using System.Buffers;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Print;

/// <summary>
/// Spreads each pixel of a plane by a kernel. Where part of the kernel falls on unknown pixels or over the edge, the known part alone is averaged, so
/// that the unknown darkens nothing.
/// </summary>
public static class KernelConvolution
{
    private const int RowsInBand = 32;

    /// <summary>Convolves a plane with a kernel into another of the same size.</summary>
    /// <param name="source">Values row by row; unknown ones must be zero.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="kernel">The kernel.</param>
    /// <param name="destination">Receives the result; zero where the source is unknown. May not be the source.</param>
    /// <param name="known">1 for each known pixel of the source, 0 for an unknown one; empty if all are known.</param>
    /// <param name="cancellation">Stops between bands of rows.</param>
    /// <exception cref="RefusalException">A plane does not hold width × height values.</exception>
    public static void Apply(
        ReadOnlyMemory<float> source,
        int width,
        int height,
        HoleImageKernel kernel,
        Memory<float> destination,
        ReadOnlyMemory<byte> known = default,
        CancellationToken cancellation = default)
        => Apply(new ConvolutionSource(source, known, width, height), 0, width, height, kernel, destination, null, cancellation);

    /// <summary>
    /// The same for the inner part of a source that reaches beyond the result by a margin on all sides, so that what lies just outside counts.
    /// </summary>
    internal static void Apply(
        ConvolutionSource source,
        int margin,
        int width,
        int height,
        HoleImageKernel kernel,
        Memory<float> destination,
        Action<double>? progress,
        CancellationToken cancellation)
    {
        source.Check(margin, width, height);
        if (destination.Length < (long)width * height)
        {
            throw new RefusalException($"The plane for the result holds {destination.Length} values; {width} × {height} are {(long)width * height}.");
        }

        var folded = new FoldedKernel(kernel);
        RowWork.Run(
            height,
            RowsInBand,
            (from, to) =>
            {
                var scratch = ArrayPool<float>.Shared.Rent(folded.ScratchLength);
                var sums = ArrayPool<float>.Shared.Rent(folded.LineLength);
                for (var row = from; row < to; row++)
                {
                    var into = destination.Span.Slice(row * width, width);
                    for (var column = 0; column < width; column += FoldedKernel.TileWidth)
                    {
                        var tile = into.Slice(column, Math.Min(FoldedKernel.TileWidth, width - column));
                        Tile(source, folded, column + margin, row + margin, tile, scratch, sums);
                    }
                }

                ArrayPool<float>.Shared.Return(scratch);
                ArrayPool<float>.Shared.Return(sums);
            },
            progress,
            cancellation);
    }

    private static void Tile(ConvolutionSource source, FoldedKernel kernel, int column, int row, Span<float> into, float[] scratch, float[] sums)
    {
        var half = kernel.HalfWidth;
        if (!source.AnyKnown(row, column, into.Length))
        {
            into.Clear();
            return;
        }

        Sum(source, kernel, column, row, into.Length, false, scratch, sums);
        sums.AsSpan(0, into.Length).CopyTo(into);
        var (first, last) = source.UnknownColumns(row - half, row + half, column - half, into.Length + (2 * half));
        var (from, to) = (into.Length, into.Length);
        if (first <= last)
        {
            // Only pixels the unknown ones reach.
            (from, to) = (Math.Max(0, first - (2 * half)), Math.Min(into.Length, last + 1));
            Normalise(source, kernel, column + from, row, into[from..to], scratch, sums);
        }

        // Of the others those near the plane's edge: all of a row near its top or bottom, the first and last few of any other.
        var (leftEnd, rightStart) = source.InnerColumns(row, column, into.Length, half);
        DivideByWeightWithin(source, kernel, column, row, into, 0, Math.Min(leftEnd, from));
        DivideByWeightWithin(source, kernel, column, row, into, to, leftEnd);
        DivideByWeightWithin(source, kernel, column, row, into, Math.Max(leftEnd, rightStart), from);
        DivideByWeightWithin(source, kernel, column, row, into, Math.Max(to, Math.Max(leftEnd, rightStart)), into.Length);
    }

    private static void DivideByWeightWithin(ConvolutionSource source, FoldedKernel kernel, int column, int row, Span<float> into, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            var (left, right, above, below) = source.Reach(row, column + i, kernel.HalfWidth);
            into[i] /= kernel.WeightWithin(left, right, above, below);
        }
    }

    private static void Sum(ConvolutionSource source, FoldedKernel kernel, int column, int row, int count, bool ofKnown, float[] scratch, float[] sums)
    {
        var half = kernel.HalfWidth;
        for (var y = 0; y <= half; y++)
        {
            var line = scratch.AsSpan(y * kernel.LineLength, count + (2 * half));
            if (ofKnown)
            {
                source.AddedKnown(row - y, row + y, column - half, line);
            }
            else
            {
                source.AddedRows(row - y, row + y, column - half, line);
            }
        }

        kernel.Tile(scratch, sums, count);
    }

    /// <summary>Divides by the weights that fell on known pixels, which are summed by the same road.</summary>
    private static void Normalise(ConvolutionSource source, FoldedKernel kernel, int column, int row, Span<float> into, float[] scratch, float[] sums)
    {
        Sum(source, kernel, column, row, into.Length, true, scratch, sums);
        for (var i = 0; i < into.Length; i++)
        {
            into[i] = source.IsKnown(column + i, row) ? into[i] / sums[i] : 0;
        }
    }
}
