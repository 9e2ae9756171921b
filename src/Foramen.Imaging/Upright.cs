using System.Runtime.InteropServices;

namespace Foramen.Imaging;

/// <summary>Turns decoded pixels upright by the Exif orientation code (Exif 2.3, tag 0x0112).</summary>
internal static class Upright
{
    /// <summary>The pixels with the first row at the visual top and the first column at the visual left.</summary>
    public static (int Width, int Height, byte[] Rgba) Turn(byte[] rgba, int width, int height, int orientation)
    {
        if (orientation is < 2 or > 8)
        {
            return (width, height, rgba);
        }

        var swaps = orientation >= 5;
        var (newWidth, newHeight) = swaps ? (height, width) : (width, height);
        var turned = GC.AllocateUninitializedArray<byte>(rgba.Length);
        Parallel.For(0, newHeight, row =>
        {
            var from = MemoryMarshal.Cast<byte, uint>(rgba.AsSpan());
            var to = MemoryMarshal.Cast<byte, uint>(turned.AsSpan()).Slice(row * newWidth, newWidth);
            for (var column = 0; column < newWidth; column++)
            {
                var (x, y) = orientation switch
                {
                    2 => (width - 1 - column, row),
                    3 => (width - 1 - column, height - 1 - row),
                    4 => (column, height - 1 - row),
                    5 => (row, column),
                    6 => (row, height - 1 - column),
                    7 => (width - 1 - row, height - 1 - column),
                    _ => (width - 1 - row, column),
                };
                to[column] = from[(y * width) + x];
            }
        });
        return (newWidth, newHeight, turned);
    }
}
