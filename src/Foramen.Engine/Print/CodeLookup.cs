using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Foramen.Engine.Print;

/// <summary>
/// 8-bit codes straight from exposure, by the leading bits of its floating-point form: 256 steps to a doubling over 28 doublings, 6e-5 to 1.6e4 lux
/// seconds, so fine that no step of a paper's curve is more than a hundredth of density.
/// </summary>
internal sealed class CodeLookup
{
    private const int BitsInDoubling = 8;
    private const int Shift = 23 - BitsInDoubling;
    private const int LowestExponent = -14;
    private const int Count = 28 << BitsInDoubling;
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

    /// <summary>The codes of a row of exposures.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Read(ReadOnlySpan<float> exposures, Span<byte> into)
    {
        var bits = MemoryMarshal.Cast<float, int>(exposures);
        into = into[..bits.Length];
        ref var first = ref MemoryMarshal.GetArrayDataReference(codes);
        for (var i = 0; i < bits.Length; i++)
        {
            into[i] = Unsafe.Add(ref first, Math.Clamp((bits[i] >> Shift) - FirstIndex, 0, Count - 1));
        }
    }
}
