using System.Buffers;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

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
                var sums = ArrayPool<float>.Shared.Rent(2 * folded.LineLength);
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
        var (from, count) = (column - half, into.Length + (2 * half));
        for (var y = 0; y <= half; y++)
        {
            var line = scratch.AsSpan(y * kernel.LineLength, count);
            source.AddedRows(row - y, row + y, from, line);
        }

        kernel.Tile(scratch, sums, into.Length);
        sums.AsSpan(0, into.Length).CopyTo(into);
        if (source.IsKnown(row - half, row + half, from, count))
        {
            return;
        }

        // The weights that fell on known pixels, by the same road.
        for (var y = 0; y <= half; y++)
        {
            source.AddedKnown(row - y, row + y, from, scratch.AsSpan(y * kernel.LineLength, count));
        }

        var weights = sums.AsSpan(kernel.LineLength);
        kernel.Tile(scratch, weights, into.Length);
        for (var i = 0; i < into.Length; i++)
        {
            into[i] = source.IsKnown(column + i, row) ? into[i] / weights[i] : 0;
        }
    }
}
