using System.Numerics;
using System.Numerics.Tensors;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Foramen.Engine.Camera;

namespace Foramen.Engine.Print;

/// <summary>
/// A kernel that is the same when mirrored, folded into one quarter: rows above and below the middle are added before they are weighed, and so are
/// columns left and right, which leaves a quarter of the multiplications.
/// </summary>
internal sealed class FoldedKernel
{
    /// <summary>Columns treated at a time, so that the added rows stay in the innermost cache.</summary>
    public const int TileWidth = 512;

    // Vectors kept in registers at a time.
    private const int Lanes = 4;

    private readonly float[] quarter;
    private readonly int[] reach;

    // Weights summed over all rows above and columns left of a corner.
    private readonly double[] summed;

    /// <summary>Folds a kernel.</summary>
    public FoldedKernel(HoleImageKernel kernel)
    {
        HalfWidth = kernel.HalfWidth;
        var side = HalfWidth + 1;
        quarter = new float[side * side];
        reach = new int[side];
        for (var y = 0; y < side; y++)
        {
            for (var x = 0; x < side; x++)
            {
                var weight = kernel.Weights[((HalfWidth + y) * kernel.Size) + HalfWidth + x];
                quarter[(y * side) + x] = weight;
                reach[y] = weight > 0 ? x : reach[y];
            }
        }

        var corners = kernel.Size + 1;
        summed = new double[corners * corners];
        for (var y = 1; y < corners; y++)
        {
            for (var x = 1; x < corners; x++)
            {
                summed[(y * corners) + x] = kernel.Weights[((y - 1) * kernel.Size) + x - 1]
                    + summed[(y * corners) + x - 1] + summed[((y - 1) * corners) + x] - summed[((y - 1) * corners) + x - 1];
            }
        }
    }

    /// <summary>Pixels from the middle to the edge.</summary>
    public int HalfWidth { get; }

    /// <summary>Floats that one row of <see cref="Tile"/>'s scratch takes: the tile, the kernel's overhang on both sides, and room for whole vectors.</summary>
    public int LineLength => TileWidth + (2 * HalfWidth) + (Lanes * Vector<float>.Count);

    /// <summary>Floats of scratch that <see cref="Tile"/> needs.</summary>
    public int ScratchLength => (HalfWidth + 1) * LineLength;

    /// <summary>The weights within a rectangle about the middle.</summary>
    /// <param name="left">Columns to the left of the middle, at most <see cref="HalfWidth"/>.</param>
    /// <param name="right">Columns to the right.</param>
    /// <param name="above">Rows above.</param>
    /// <param name="below">Rows below.</param>
    public float WeightWithin(int left, int right, int above, int below)
    {
        var corners = (2 * HalfWidth) + 2;
        double At(int x, int y) => summed[((HalfWidth + y) * corners) + HalfWidth + x];
        return (float)(At(right + 1, below + 1) - At(-left, below + 1) - At(right + 1, -above) + At(-left, -above));
    }

    /// <summary>
    /// The sum of weights times values for up to <see cref="TileWidth"/> columns of one row. The scratch holds added rows: at line y the source row y above
    /// plus the one y below, starting <see cref="HalfWidth"/> columns to the left of the tile.
    /// </summary>
    /// <param name="lines">The scratch.</param>
    /// <param name="sums">Receives the sums; as long as a whole number of vectors.</param>
    /// <param name="columns">Columns wanted.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Tile(ReadOnlySpan<float> lines, Span<float> sums, int columns)
    {
        var count = Vector<float>.Count;
        ref var line0 = ref MemoryMarshal.GetReference(lines);
        ref var sum0 = ref MemoryMarshal.GetReference(sums);
        var side = HalfWidth + 1;
        var lineLength = LineLength;
        for (var column = 0; column < columns; column += Lanes * count)
        {
            var (a, b, c, d) = (Vector<float>.Zero, Vector<float>.Zero, Vector<float>.Zero, Vector<float>.Zero);
            for (var y = 0; y < side; y++)
            {
                var middle = (nuint)((y * lineLength) + column + HalfWidth);
                var weight = new Vector<float>(quarter[y * side]);
                a = Vector.MultiplyAddEstimate(Vector.LoadUnsafe(ref line0, middle), weight, a);
                b = Vector.MultiplyAddEstimate(Vector.LoadUnsafe(ref line0, middle + (nuint)count), weight, b);
                c = Vector.MultiplyAddEstimate(Vector.LoadUnsafe(ref line0, middle + (nuint)(2 * count)), weight, c);
                d = Vector.MultiplyAddEstimate(Vector.LoadUnsafe(ref line0, middle + (nuint)(3 * count)), weight, d);
                var end = reach[y];
                for (var x = 1; x <= end; x++)
                {
                    var (right, left) = (middle + (nuint)x, middle - (nuint)x);
                    weight = new Vector<float>(quarter[(y * side) + x]);
                    a = Vector.MultiplyAddEstimate(Vector.LoadUnsafe(ref line0, right) + Vector.LoadUnsafe(ref line0, left), weight, a);
                    b = Vector.MultiplyAddEstimate(
                        Vector.LoadUnsafe(ref line0, right + (nuint)count) + Vector.LoadUnsafe(ref line0, left + (nuint)count), weight, b);
                    c = Vector.MultiplyAddEstimate(
                        Vector.LoadUnsafe(ref line0, right + (nuint)(2 * count)) + Vector.LoadUnsafe(ref line0, left + (nuint)(2 * count)), weight, c);
                    d = Vector.MultiplyAddEstimate(
                        Vector.LoadUnsafe(ref line0, right + (nuint)(3 * count)) + Vector.LoadUnsafe(ref line0, left + (nuint)(3 * count)), weight, d);
                }
            }

            Vector.StoreUnsafe(a, ref sum0, (nuint)column);
            Vector.StoreUnsafe(b, ref sum0, (nuint)(column + count));
            Vector.StoreUnsafe(c, ref sum0, (nuint)(column + (2 * count)));
            Vector.StoreUnsafe(d, ref sum0, (nuint)(column + (3 * count)));
        }
    }

    /// <summary>Adds two rows, either of which may be missing (empty), into a line of the scratch.</summary>
    public static void AddRows(ReadOnlySpan<float> above, ReadOnlySpan<float> below, Span<float> line)
    {
        if (above.IsEmpty || below.IsEmpty)
        {
            if (above.IsEmpty && below.IsEmpty)
            {
                line.Clear();
            }
            else
            {
                (above.IsEmpty ? below : above).CopyTo(line);
            }

            return;
        }

        TensorPrimitives.Add(above, below, line);
    }
}
