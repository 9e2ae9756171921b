using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Quantities;

public class DurationTests
{
    // Two minutes and two hours are where the larger unit begins; what would be rounded up to there is said in it already.
    [Theory]
    [InlineData(0, "0 s")]
    [InlineData(9.6, "10 s")]
    [InlineData(119, "119 s")]
    [InlineData(119.7, "2 min")]
    [InlineData(120, "2 min")]
    [InlineData(340, "6 min")]
    [InlineData(5400, "90 min")]
    [InlineData(7140, "119 min")]
    [InlineData(7190, "2 h")]
    [InlineData(10_000, "3 h")]
    public void A_rough_time_is_said_in_the_unit_that_fits_what_is_known(double seconds, string words)
        => Assert.Equal(words, Duration.FromSeconds(seconds).ToRoughText());
}
