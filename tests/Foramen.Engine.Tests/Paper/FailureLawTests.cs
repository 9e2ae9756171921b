using CsCheck;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper;

public class FailureLawTests
{
    private static readonly Gen<FailureLaw> GenLaw = Gen.OneOf<FailureLaw>(
        Gen.Double[0.5, 1].Select(p => (FailureLaw)SchwarzschildFailure.FromExponent(p)),
        Gen.Double[0, 2].Select(a => (FailureLaw)AdditivePowerFailure.FromExtraAtOneSecond(a)),
        Gen.Select(Gen.Double[1, 2], Gen.Double[1, 3], Gen.Double[1, 4]).Select((a, b, c) => (FailureLaw)MeasuredFailure.FromTable(
            [(S(4), S(4 * a)), (S(30), S(30 * a * b)), (S(200), S(200 * a * b * c))])));

    [Fact]
    public void Time_needed_and_metered_time_are_each_others_inverse() => Gen.Select(GenLaw, Gen.Double[-2, 4]).Sample((law, lg) =>
    {
        var metered = Math.Pow(10, lg);
        Assert.Equal(metered, law.MeteredSecondsFor(law.SecondsNeeded(metered)), metered * 1e-9);
    });

    [Fact]
    public void Longer_always_does_more() => Gen.Select(GenLaw, Gen.Double[-2, 4], Gen.Double[0.001, 1]).Sample((law, lg, more) =>
        law.SecondsNeeded(Math.Pow(10, lg + more)) > law.SecondsNeeded(Math.Pow(10, lg)));

    [Fact]
    public void Failure_never_gives_light() => Gen.Select(GenLaw, Gen.Double[-2, 4]).Sample((law, lg) =>
        law.SecondsNeeded(Math.Pow(10, lg)) >= Math.Pow(10, lg) * (1 - 1e-12));

    [Fact]
    public void A_table_taken_from_a_law_gives_the_law_back()
    {
        var law = SchwarzschildFailure.FromExponent(0.85);
        var table = MeasuredFailure.FromTable([.. new double[] { 10, 60, 300 }.Select(t => (S(t), S(law.SecondsNeeded(t))))]);
        Assert.Equal(law.SecondsNeeded(120), table.SecondsNeeded(120), 1e-6);
        Assert.Equal(law.SecondsNeeded(600), table.SecondsNeeded(600), 1e-6);
    }

    [Fact]
    public void Tables_out_of_order_or_gaining_light_are_refused()
    {
        Assert.Throws<RefusalException>(() => MeasuredFailure.FromTable([]));
        Assert.Throws<RefusalException>(() => MeasuredFailure.FromTable([(S(10), S(8))]));
        Assert.Throws<RefusalException>(() => MeasuredFailure.FromTable([(S(10), S(20)), (S(10), S(30))]));
        Assert.Throws<RefusalException>(() => MeasuredFailure.FromTable([(S(1), S(1))]));
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void Absurd_exponents_are_refused(double exponent)
        => Assert.Throws<RefusalException>(() => SchwarzschildFailure.FromExponent(exponent));
}
