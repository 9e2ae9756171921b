using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print;

public sealed class CodeLookupTests
{
    // A code for every doubling, from 2^-14 on.
    private static readonly CodeLookup Doublings = new(exposure => (byte)(Math.Floor(Math.Log2(exposure)) + 14));

    [Fact]
    public void Every_doubling_has_its_own_codes()
    {
        for (var doubling = -14; doubling < 14; doubling++)
        {
            var start = (float)Math.Pow(2, doubling);
            Assert.Equal([doubling + 14, doubling + 14, doubling + 14], Codes(start, 1.5f * start, MathF.BitDecrement(2 * start)).Select(code => (int)code));
        }
    }

    // A hair under zero is what rounding leaves of no light.
    [Fact]
    public void Beyond_the_table_the_ends_hold()
        => Assert.Equal([0, 0, 0, 27, 27], Codes(0, 1e-30f, -1e-9f, 3e4f, float.MaxValue));

    // A step is a 256th of a doubling: just over 1 lx s, from 1 to 1 + 1/256, its middle 1 + 1/512.
    [Fact]
    public void A_step_has_the_code_of_its_middle()
    {
        var asked = new List<float>();
        _ = new CodeLookup(exposure =>
        {
            asked.Add(exposure);
            return 0;
        });
        Assert.Equal(28 * 256, asked.Count);
        Assert.Contains(1 + (1 / 512f), asked);
        Assert.Equal((float)(Math.Pow(2, -14) * (1 + (1 / 512.0))), asked[0]);
        Assert.True(asked.Zip(asked.Skip(1)).All(pair => pair.First < pair.Second));
    }

    private static byte[] Codes(params float[] exposures)
    {
        var codes = new byte[exposures.Length];
        Doublings.Read(exposures, codes);
        return codes;
    }
}
