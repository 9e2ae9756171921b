using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Camera;

/// <summary>A grey picture of something on the bench: 8-bit codes in rows from the top, and the light that each code stands for. Immutable.</summary>
public sealed class ScanImage
{
    private static readonly float[] Proportional = [.. Enumerable.Range(0, 256).Select(code => code / 255f)];
    private readonly ReadOnlyMemory<byte> codes;
    private readonly float[] light;

    private ScanImage(int width, int height, ReadOnlyMemory<byte> codes, float[] light)
        => (Width, Height, this.codes, this.light) = (width, height, codes, light);

    /// <summary>Columns, pixels.</summary>
    public int Width { get; }

    /// <summary>Rows, pixels.</summary>
    public int Height { get; }

    /// <summary>A scan from grey codes.</summary>
    /// <param name="width">Columns, 1 to 65 535.</param>
    /// <param name="height">Rows, 1 to 65 535.</param>
    /// <param name="codes">One byte a pixel; kept, not copied.</param>
    /// <param name="encoding">How codes stand for light.</param>
    /// <exception cref="RefusalException">Not width × height codes.</exception>
    public static ScanImage FromGrey(int width, int height, ReadOnlyMemory<byte> codes, ScanEncoding encoding = ScanEncoding.Srgb)
    {
        Guard.Within(width, 1, ushort.MaxValue, "the scan's width", "pixels");
        Guard.Within(height, 1, ushort.MaxValue, "the scan's height", "pixels");
        return codes.Length == (long)width * height
            ? new ScanImage(width, height, codes, encoding == ScanEncoding.Linear ? Proportional : SrgbTransfer.LinearOfCodes.ToArray())
            : throw new RefusalException($"The scan holds {codes.Length} values; {width} × {height} pixels need {(long)width * height}.");
    }

    /// <summary>
    /// A scan from colour: the luma of Rec. 601 in whole numbers, (77 R + 150 G + 29 B)/256. A grey subject keeps its codes; coloured plates only need to differ
    /// from the hole.
    /// </summary>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="rgba">Four bytes a pixel; alpha is ignored.</param>
    /// <param name="encoding">How codes stand for light.</param>
    /// <exception cref="RefusalException">Not width × height pixels.</exception>
    public static ScanImage FromRgba(int width, int height, ReadOnlyMemory<byte> rgba, ScanEncoding encoding = ScanEncoding.Srgb)
    {
        var pixels = (long)width * height;
        if (rgba.Length != pixels * 4)
        {
            throw new RefusalException($"The scan holds {rgba.Length} bytes; {width} × {height} pixels need {pixels * 4}.");
        }

        var grey = GC.AllocateUninitializedArray<byte>((int)pixels);
        Bands.Run(height, row =>
        {
            var from = rgba.Span.Slice(row * width * 4, width * 4);
            var into = grey.AsSpan(row * width, width);
            for (var i = 0; i < into.Length; i++)
            {
                into[i] = (byte)(((77 * from[4 * i]) + (150 * from[(4 * i) + 1]) + (29 * from[(4 * i) + 2]) + 128) >> 8);
            }
        });
        return FromGrey(width, height, grey, encoding);
    }

    /// <summary>The codes of all rows.</summary>
    internal ReadOnlySpan<byte> Codes => codes.Span;

    /// <summary>The light of each code, 0 to 1.</summary>
    internal ReadOnlySpan<float> LightOfCodes => light;

    /// <summary>The codes of a row.</summary>
    internal ReadOnlySpan<byte> Row(int row) => codes.Span.Slice(row * Width, Width);

    /// <summary>The light a code stands for, 0 to 1.</summary>
    internal float LightOf(byte code) => light[code];

    /// <summary>The light of a pixel, 0 to 1.</summary>
    internal float LightAt(int column, int row) => light[codes.Span[(row * Width) + column]];

    /// <summary>Rows on all cores; in a browser one after the other.</summary>
    private static class Bands
    {
        public static void Run(int rows, Action<int> work)
        {
            if (OperatingSystem.IsBrowser())
            {
                for (var row = 0; row < rows; row++)
                {
                    work(row);
                }
            }
            else
            {
                Parallel.For(0, rows, work);
            }
        }
    }
}
