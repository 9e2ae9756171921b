using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Foramen.Engine.Print;

/// <summary>Reads a map of values between its pixels, from the four around a place; within half a pixel of the map's edge, the edge's own.</summary>
internal readonly struct MapReader(int width, int height)
{
    private readonly float lastX = width - 1;
    private readonly float lastY = height - 1;
    private readonly int lastColumn = Math.Max(0, width - 2);
    private readonly int lastRow = Math.Max(0, height - 2);
    private readonly int right = width > 1 ? 1 : 0;
    private readonly int down = height > 1 ? width : 0;

    /// <summary>The value at a place in pixels, whole numbers at their middles.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public float Sample(ReadOnlySpan<float> source, float x, float y)
    {
        x = Math.Clamp(x, 0, lastX);
        y = Math.Clamp(y, 0, lastY);
        var column = Math.Min((int)x, lastColumn);
        var row = Math.Min((int)y, lastRow);
        var (partX, partY) = (x - column, y - row);
        ref var corner = ref Unsafe.Add(ref MemoryMarshal.GetReference(source), (row * width) + column);
        var top = corner + ((Unsafe.Add(ref corner, right) - corner) * partX);
        var lower = Unsafe.Add(ref corner, down);
        var bottom = lower + ((Unsafe.Add(ref corner, down + right) - lower) * partX);
        return top + ((bottom - top) * partY);
    }

    /// <summary>Four at once.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector128<float> Sample4(ReadOnlySpan<float> source, Vector128<float> x, Vector128<float> y)
    {
        x = Vector128.MinNative(Vector128.MaxNative(x, Vector128<float>.Zero), Vector128.Create(lastX));
        y = Vector128.MinNative(Vector128.MaxNative(y, Vector128<float>.Zero), Vector128.Create(lastY));
        var column = Vector128.Min(Vector128.ConvertToInt32Native(x), Vector128.Create(lastColumn));
        var row = Vector128.Min(Vector128.ConvertToInt32Native(y), Vector128.Create(lastRow));
        var partX = x - Vector128.ConvertToSingle(column);
        var partY = y - Vector128.ConvertToSingle(row);
        var index = (row * width) + column;
        ref var first = ref MemoryMarshal.GetReference(source);
        ref var a = ref Unsafe.Add(ref first, index.GetElement(0));
        ref var b = ref Unsafe.Add(ref first, index.GetElement(1));
        ref var c = ref Unsafe.Add(ref first, index.GetElement(2));
        ref var d = ref Unsafe.Add(ref first, index.GetElement(3));
        var upperLeft = Vector128.Create(a, b, c, d);
        var upperRight = Vector128.Create(Unsafe.Add(ref a, right), Unsafe.Add(ref b, right), Unsafe.Add(ref c, right), Unsafe.Add(ref d, right));
        a = ref Unsafe.Add(ref a, down);
        b = ref Unsafe.Add(ref b, down);
        c = ref Unsafe.Add(ref c, down);
        d = ref Unsafe.Add(ref d, down);
        var lowerLeft = Vector128.Create(a, b, c, d);
        var lowerRight = Vector128.Create(Unsafe.Add(ref a, right), Unsafe.Add(ref b, right), Unsafe.Add(ref c, right), Unsafe.Add(ref d, right));
        var top = Vector128.MultiplyAddEstimate(upperRight - upperLeft, partX, upperLeft);
        var bottom = Vector128.MultiplyAddEstimate(lowerRight - lowerLeft, partX, lowerLeft);
        return Vector128.MultiplyAddEstimate(bottom - top, partY, top);
    }
}
