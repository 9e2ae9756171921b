using CsCheck;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Quantities;

public class GoldenSectionTests
{
    // The golden ratio cuts 1 into 0.381966… and 0.618034…; Euclid, book VI, proposition 30.
    [Fact]
    public void The_stretch_is_cut_in_extreme_and_mean_ratio()
        => Assert.Equal(GoldenSection.Share / (1 - GoldenSection.Share), 1 - GoldenSection.Share, 1e-15);

    [Fact]
    public void The_summit_of_a_hill_is_found_wherever_it_stands() => Gen.Select(Gen.Double[-1, 1], Gen.Double[0.5, 3]).Sample(
        (at, steepness) => Assert.Equal(at, GoldenSection.Summit(x => -Math.Pow(Math.Abs(x - at), steepness), -1.5, 2, 1e-6), 1e-6),
        iter: Samples.Of(200));

    [Fact]
    public void A_slope_leads_to_its_end_and_a_flat_top_to_its_beginning()
    {
        Assert.Equal(3, GoldenSection.Summit(x => x, 1, 3, 1e-6), 1e-6);
        Assert.Equal(1, GoldenSection.Summit(x => -x, 1, 3, 1e-6), 1e-6);
        Assert.Equal(1, GoldenSection.Summit(_ => 0, 1, 3, 1e-6), 1e-6);
    }

    [Fact]
    public void A_height_that_is_no_number_ends_all_the_same()
        => Assert.InRange(GoldenSection.Summit(_ => double.NaN, 1, 3, 1e-6), 1, 3);
}
