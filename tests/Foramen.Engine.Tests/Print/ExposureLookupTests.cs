using CsCheck;
using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print;

public sealed class ExposureLookupTests
{
    private static readonly ExposureLookup Lg = new(-99, lg => lg);

    // Straight over a 64th of a doubling, a logarithm sags by less than (ln 2/64)²/8 of a natural one, 6e-6 of a lg.
    [Fact]
    public void Within_the_table_it_is_the_function()
        => Gen.Double[-7.1, 7.2].Sample(lg => Assert.Equal(lg, Lg.At((float)Math.Pow(10, lg)), 2e-5), iter: Samples.Of(2000));

    [Fact]
    public void Without_light_it_is_the_value_at_none_and_past_the_end_the_last()
    {
        var end = (float)Math.Log10(Math.Pow(2, 24));
        Assert.Equal(-99, Lg.At(0));
        Assert.Equal(-99, Lg.At(-1e-9f));
        Assert.Equal(end, Lg.At(3e7f), 1e-5);
        Assert.Equal(end, Lg.At(float.MaxValue), 1e-5);
        float[] row = [0, 1, 100];
        Lg.Read(row);
        Assert.Equal([-99, 0, 2], row.Select(value => Math.Round(value, 4)));
    }
}
