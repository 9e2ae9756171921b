using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>
/// Turns a pixel's three codes into luminance by adding three table entries, and knows which codes are beyond the photograph's range.
/// Weights are those of a sight, restated for the photograph's colour space, times the luminance of white.
/// </summary>
internal sealed class ChannelSums
{
    private const byte Blown = 1;
    private const byte Lit = 2;

    private readonly float[] red = new float[256];
    private readonly float[] green = new float[256];
    private readonly float[] blue = new float[256];
    private readonly byte[] redMarks = new byte[256];
    private readonly byte[] greenMarks = new byte[256];
    private readonly byte[] blueMarks = new byte[256];
    private readonly Vector128<byte> mattering;
    private readonly float bound;

    /// <summary>Tables for a photograph's colour space, a sight, and the luminance of white (1 for relative values).</summary>
    public ChannelSums(PhotographColour colour, PaperSight sight, double white)
    {
        var weights = RgbSpace.WeightsIn(colour, sight.Red, sight.Green, sight.Blue);
        Fill(red, redMarks, weights.Red, white);
        Fill(green, greenMarks, weights.Green, white);
        Fill(blue, blueMarks, weights.Blue, white);
        mattering = Vector128.Create(Mask(weights.Red) | (Mask(weights.Green) << 8) | (Mask(weights.Blue) << 16)).AsByte();
        bound = (float)(white * SrgbTransfer.LinearOfCode(LuminanceMap.BlockedCode));
    }

    /// <summary>Tables for absolute luminance.</summary>
    /// <exception cref="RefusalException">The photograph is not anchored.</exception>
    public static ChannelSums Absolute(ScenePhotograph photo, PaperSight sight)
    {
        if (photo.WhiteLuminance is not { } white)
        {
            throw new RefusalException(
                "The photograph does not say how it was exposed, so it holds no luminances yet; give one meter reading of a place in it.");
        }

        return new ChannelSums(photo.Facts.Colour, sight, white.CandelasPerSquareMetre);
    }

    /// <summary>Luminance and limit of one pixel of R, G, B, A codes.</summary>
    public float Read(ReadOnlySpan<byte> pixel, out LuminanceLimit limit)
    {
        var value = red[pixel[0]] + green[pixel[1]] + blue[pixel[2]];
        var marks = redMarks[pixel[0]] | greenMarks[pixel[1]] | blueMarks[pixel[2]];
        limit = LimitOf(marks);
        return limit == LuminanceLimit.AtMost ? bound : Math.Max(0, value);
    }

    /// <summary>Luminances and limits of a row of pixels.</summary>
    public void ReadRow(ReadOnlySpan<byte> rgba, Span<float> values, Span<LuminanceLimit> limits)
    {
        rgba = rgba[..(4 * values.Length)];
        limits = limits[..values.Length];
        limits.Clear();
        ref var codes = ref MemoryMarshal.GetReference(rgba);
        var i = 0;
        for (; i <= values.Length - 4; i += 4)
        {
            // Four pixels at once: almost all lie within the photograph's range, and those need only three table entries each.
            var four = Vector128.LoadUnsafe(ref codes, (nuint)(4 * i)) & mattering;
            var blown = Vector128.GreaterThanOrEqual(four, Vector128.Create(LuminanceMap.BlownCode)).AsUInt32();
            var lit = Vector128.GreaterThan(four, Vector128.Create(LuminanceMap.BlockedCode)).AsUInt32();
            if ((blown | Vector128.Equals(lit, Vector128<uint>.Zero)) == Vector128<uint>.Zero)
            {
                AddUp(ref codes, 4 * i, values.Slice(i, 4));
            }
            else
            {
                ReadSlowly(rgba, values, limits, i, i + 4);
            }
        }

        ReadSlowly(rgba, values, limits, i, values.Length);
    }

    private void AddUp(ref byte codes, int offset, Span<float> four)
    {
        // The tables have an entry for every byte, so no index can be out of bounds.
        ref var r = ref MemoryMarshal.GetArrayDataReference(red);
        ref var g = ref MemoryMarshal.GetArrayDataReference(green);
        ref var b = ref MemoryMarshal.GetArrayDataReference(blue);
        for (var i = 0; i < four.Length; i++)
        {
            var pixel = Unsafe.ReadUnaligned<uint>(ref Unsafe.Add(ref codes, offset + (4 * i)));
            var value = Unsafe.Add(ref r, (nint)(pixel & 255)) + Unsafe.Add(ref g, (nint)((pixel >> 8) & 255)) + Unsafe.Add(ref b, (nint)((pixel >> 16) & 255));
            four[i] = value > 0 ? value : 0;
        }
    }

    private void ReadSlowly(ReadOnlySpan<byte> rgba, Span<float> values, Span<LuminanceLimit> limits, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            values[i] = Read(rgba.Slice(4 * i, 4), out limits[i]);
        }
    }

    private static LuminanceLimit LimitOf(int marks)
        => (marks & Blown) != 0 ? LuminanceLimit.AtLeast : (marks & Lit) != 0 ? LuminanceLimit.Exact : LuminanceLimit.AtMost;

    private static uint Mask(double weight) => weight >= LuminanceMap.WeightThatMatters ? 255u : 0;

    private static void Fill(float[] table, byte[] marks, double weight, double white)
    {
        var matters = Mask(weight) != 0;
        for (var code = 0; code < 256; code++)
        {
            table[code] = (float)(weight * white * SrgbTransfer.LinearOfCode((byte)code));
            if (matters)
            {
                marks[code] = (byte)((code >= LuminanceMap.BlownCode ? Blown : 0) | (code > LuminanceMap.BlockedCode ? Lit : 0));
            }
        }
    }
}
