using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

public class StripPriorTests
{
    [Fact]
    public void A_box_is_thought_to_lie_where_its_curve_is_half_way() => Gen.Select(Gen.Double[50, 1000], Gen.Double[60, 150], Gen.Double[0.5, 2]).Sample((speed, range, asymmetry) =>
    {
        var paper = Box(speed, range, asymmetry);
        var prior = StripPrior.For(paper);
        Assert.Equal((0.06 + 2.06) / 2, paper.Curve.DensityAtLg(prior.MidLgExposure.Mean), 1e-9);
        Assert.Equal(paper.Failure, prior.Failure);
    });

    // Three stops are 0.903 in lg; a spread of four stops is doubled, 8·0.30103.
    [Theory]
    [InlineData(0.35, 0.9)]
    [InlineData(4, 2.40824)]
    public void A_label_is_never_believed_closer_than_three_stops(double spread, double lg)
        => Assert.Equal(lg, StripPrior.For(Box(500, 110, 1) with { SpeedSpread = Stops.FromValue(spread) }).MidLgExposure.Sd, 1e-5);

    [Theory]
    [InlineData(0, 0.01)]
    [InlineData(0.08, 0.08)]
    public void Failure_is_never_known_to_less_than_a_hundredth(double spread, double assumed)
        => Assert.Equal(assumed, StripPrior.For(Box(500, 110, 1) with { FailureSpreadPerDoubling = spread }).FailureSpread);

    private static PhotographicPaper Box(double speed, double range, double asymmetry) => PhotographicPaper.FromSpeed(
        "box", PaperKind.NegativeWorking, D(0.06), D(2.06), range, IsoPaperSpeed.FromValue(speed), PaperSensitivity.BlueSensitive, SchwarzschildFailure.FromExponent(0.87), asymmetry);
}
