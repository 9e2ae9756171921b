using CsCheck;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper;

public class AdjustedFailureTests
{
    private static readonly Gen<FailureLaw> GenLaw = Gen.OneOf<FailureLaw>(
        Gen.Double[0.6, 1].Select(p => (FailureLaw)SchwarzschildFailure.FromExponent(p)),
        Gen.Double[0, 2].Select(a => (FailureLaw)AdditivePowerFailure.FromExtraAtOneSecond(a)),
        Gen.Double[1, 3].Select(a => (FailureLaw)MeasuredFailure.FromTable([(S(1), S(a)), (S(30), S(60 * a)), (S(200), S(800 * a))])));

    // t_m = t^p·t^δ is Schwarzschild's law with p + δ.
    [Fact]
    public void A_corrected_power_law_is_the_power_law_of_the_corrected_exponent()
        => Gen.Select(Gen.Double[0.7, 0.8], Gen.Double[-0.2, 0.2], Gen.Double[-1, 4]).Sample((p, correction, lg) =>
        {
            var corrected = AdjustedFailure.Of(SchwarzschildFailure.FromExponent(p), correction);
            var known = SchwarzschildFailure.FromExponent(p + correction);
            var seconds = Math.Pow(10, lg);
            Assert.Equal(1, corrected.MeteredSecondsFor(seconds) / known.MeteredSecondsFor(seconds), 1e-11);
            Assert.Equal(1, corrected.SecondsNeeded(seconds) / known.SecondsNeeded(seconds), 1e-11);
        });

    [Fact]
    public void Time_needed_and_metered_time_stay_each_others_inverse()
        => Gen.Select(GenLaw, Gen.Double[-0.25, 0.25], Gen.Double[-2, 4]).Sample((law, correction, lg) =>
        {
            var corrected = AdjustedFailure.Of(law, correction);
            var metered = Math.Pow(10, lg);
            Assert.Equal(1, corrected.MeteredSecondsFor(corrected.SecondsNeeded(metered)) / metered, 1e-9);
        });

    [Fact]
    public void Each_doubling_of_time_beyond_a_second_brings_so_many_stops()
        => Gen.Select(GenLaw, Gen.Double[-0.3, 0.3], Gen.Int[0, 14]).Sample((law, correction, doublings) =>
        {
            var seconds = Math.Pow(2, doublings);
            var change = Math.Log2(AdjustedFailure.Of(law, correction).MeteredSecondsFor(seconds) / law.MeteredSecondsFor(seconds));
            Assert.Equal(correction * doublings, change, 1e-9);
        });

    [Fact]
    public void Up_to_a_second_nothing_is_corrected() => Gen.Select(GenLaw, Gen.Double[-0.3, 0.3], Gen.Double[0.001, 1]).Sample((law, correction, seconds) =>
    {
        var corrected = AdjustedFailure.Of(law, correction);
        Assert.Equal(law.MeteredSecondsFor(seconds), corrected.MeteredSecondsFor(seconds), 1e-12);
        var metered = law.MeteredSecondsFor(seconds);
        Assert.Equal(seconds, corrected.SecondsNeeded(metered), 1e-9 * seconds);
    });

    [Fact]
    public void No_correction_leaves_the_law_itself()
        => Assert.Same(SchwarzschildFailure.Assumed, AdjustedFailure.Of(SchwarzschildFailure.Assumed, 0));

    [Theory]
    [InlineData(-0.31)]
    [InlineData(0.31)]
    [InlineData(double.NaN)]
    public void Absurd_corrections_are_refused(double correction)
        => Assert.Throws<RefusalException>(() => AdjustedFailure.Of(SchwarzschildFailure.Assumed, correction));
}
