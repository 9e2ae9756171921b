using System.Diagnostics;
using CsCheck;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Tests.TestKit;

/// <summary>
/// Valid files, damaged as a bad disk or an ill-willed sender would: bytes changed, parts cut out, doubled, moved, repeated a thousand times, numbers made huge,
/// words of the format put where they do not belong. Whatever comes in ends in a result or a refusal, in bounded memory, and does not hang.
/// </summary>
internal static class Mutations
{
    // Far above what any of the files takes on a busy machine; a hang is told from a slow machine.
    private static readonly TimeSpan NoHang = TimeSpan.FromSeconds(30);

    private static readonly byte[][] Words =
    [
        [.. "99999999999999999999e308"u8], [.. "-1e-400"u8], [.. "NaN"u8], [.. "\u0000"u8], [.. "<![CDATA["u8], [.. "<!DOCTYPE x [<!ENTITY a \"b\">]>"u8], [.. "&a;"u8],
        [.. "{\"a\":["u8], [.. "[[[[[[[["u8], [.. "\n"u8], [0xFF, 0xFF, 0xFF, 0xFF], [0x7F, 0xFF, 0xFF, 0xFF], [0x80, 0, 0, 0], [0xC0, 0x80], [0xED, 0xA0, 0x80],
    ];

    private static readonly Gen<(int Kind, int At, int Length, int To, int Word)> Step
        = Gen.Select(Gen.Int[0, 6], Gen.Int[0, int.MaxValue - 1], Gen.Int[1, 200], Gen.Int[0, int.MaxValue - 1], Gen.Int[0, 255]);

    /// <summary>Reads many damaged copies.</summary>
    /// <param name="samples">Valid files.</param>
    /// <param name="read">The importer; a <see cref="RefusalException"/> is a good end, any other exception is not.</param>
    /// <param name="mostBytesAllocated">What one reading may allocate.</param>
    /// <param name="iterations">How many.</param>
    public static void Survives(IReadOnlyList<byte[]> samples, Action<byte[]> read, long mostBytesAllocated, int iterations)
        => Gen.Select(Gen.Int[0, samples.Count - 1], Step.Array[1, 6]).Sample(
            (sample, steps) =>
            {
                var file = samples[sample];
                foreach (var step in steps)
                {
                    file = Apply(file, step);
                }

                var (before, watch) = (GC.GetAllocatedBytesForCurrentThread(), Stopwatch.StartNew());
                try
                {
                    read(file);
                }
                catch (RefusalException refusal)
                {
                    Assert.EndsWith(".", refusal.Message, StringComparison.Ordinal);
                    Assert.DoesNotContain("\n", refusal.Message, StringComparison.Ordinal);
                }

                var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
                Assert.True(allocated <= mostBytesAllocated, $"{allocated} bytes were allocated for a file of {file.Length}.");
                Assert.True(watch.Elapsed < NoHang, $"It took {watch.Elapsed}.");
            },
            iter: Samples.Of(iterations));

    private static byte[] Apply(byte[] file, (int Kind, int At, int Length, int To, int Word) step)
    {
        if (file.Length == 0)
        {
            return Words[step.Word % Words.Length];
        }

        var at = step.At % file.Length;
        var length = Math.Min(step.Length, file.Length - at);
        var part = file.AsSpan(at, length);
        var to = step.To % file.Length;
        switch (step.Kind)
        {
            case 0:
                var changed = file.ToArray();
                changed[at] = (byte)step.Word;
                return changed;
            case 1:
                return [.. file.AsSpan(0, at), .. file.AsSpan(at + length)];
            case 2:
                return [.. file.AsSpan(0, to), .. part, .. file.AsSpan(to)];
            case 3:
                return file[..at];
            case 4:
                return [.. file.AsSpan(0, at), .. Words[step.Word % Words.Length], .. file.AsSpan(at + length)];
            case 5:
                // Many times, within what a file that is still read may have.
                var many = new List<byte>(file.AsSpan(0, at).ToArray());
                for (var i = 0; i < 1_000 && many.Count < 400_000; i++)
                {
                    many.AddRange(part);
                }

                many.AddRange(file.AsSpan(at));
                return [.. many];
            default:
                var flipped = file.ToArray();
                flipped[at] ^= (byte)(1 << (step.Word % 8));
                return flipped;
        }
    }
}
