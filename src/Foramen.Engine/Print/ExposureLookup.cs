using System.Runtime.CompilerServices;

namespace Foramen.Engine.Print;

/// <summary>
/// A function of exposure in a table whose places are the leading bits of the exposure's own floating-point form, which is a lg scale, straight within
/// each 64th of a doubling. It spans 48 doublings, 6e-8 to 1.7e7 lux seconds, in 3072 steps; outside, the function's value at no light and at the end holds.
/// </summary>
internal sealed class ExposureLookup
{
    private const int BitsInDoubling = 6;
    private const int Shift = 23 - BitsInDoubling;
    private const int LowestExponent = -24;
    private const int Doublings = 48;
    private const int Count = Doublings << BitsInDoubling;
    private const int FirstBits = (LowestExponent + 127) << 23;
    private const float PartPerUnit = 1f / (1 << Shift);

    private readonly float[] values = new float[Count + 2];

    /// <summary>A table of a function.</summary>
    /// <param name="atNone">Its value at no exposure.</param>
    /// <param name="atLg">Its value at a lg exposure.</param>
    public ExposureLookup(double atNone, Func<double, double> atLg)
    {
        for (var i = 0; i <= Count; i++)
        {
            values[i] = (float)atLg(Math.Log10(BitConverter.Int32BitsToSingle(FirstBits + (i << Shift))));
        }

        values[0] = (float)atNone;
        values[Count + 1] = values[Count];
    }

    /// <summary>The value at an exposure in lux seconds; less than none, as rounding may leave, is none.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public float At(float exposure)
    {
        var bits = Math.Clamp(BitConverter.SingleToInt32Bits(exposure), FirstBits, FirstBits + (Count << Shift)) - FirstBits;
        var index = bits >> Shift;
        var part = (bits & ((1 << Shift) - 1)) * PartPerUnit;
        var low = values[index];
        return low + (part * (values[index + 1] - low));
    }

    /// <summary>Puts the values of a row of exposures in their place.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Read(Span<float> exposures)
    {
        for (var i = 0; i < exposures.Length; i++)
        {
            exposures[i] = At(exposures[i]);
        }
    }
}
