using System.Runtime.CompilerServices;

namespace Foramen.Engine.Print;

/// <summary>
/// 8-bit codes straight from exposure, by the leading bits of its floating-point form: 512 steps to a doubling over 32 doublings, so fine that no step of a
/// paper's curve is more than a hundredth of density.
/// </summary>
internal sealed class CodeLookup
{
    private const int BitsInDoubling = 9;
    private const int Shift = 23 - BitsInDoubling;
    private const int LowestExponent = -16;
    private const int Count = 32 << BitsInDoubling;
    private const int FirstIndex = (LowestExponent + 127) << BitsInDoubling;

    private readonly byte[] codes = new byte[Count];

    /// <summary>A table of codes: those of a function of the exposure in lux seconds, taken at the middle of each step.</summary>
    public CodeLookup(Func<float, byte> codeAt)
    {
        for (var i = 0; i < Count; i++)
        {
            codes[i] = codeAt(BitConverter.Int32BitsToSingle(((FirstIndex + i) << Shift) + (1 << (Shift - 1))));
        }
    }

    /// <summary>The code at an exposure in lux seconds, 0 or more.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public byte At(float exposure)
        => codes[Math.Clamp((BitConverter.SingleToInt32Bits(exposure) >> Shift) - FirstIndex, 0, Count - 1)];
}
