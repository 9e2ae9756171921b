using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper;

/// <summary>What no paper can be is refused at the border, by the name of what is wrong.</summary>
public class PaperRefusalTests
{
    [Theory]
    [InlineData(0.6, 2.6, 7, 0.5, 1, "minimum density")]
    [InlineData(0.3, 0.5, 7, 0.5, 1, "net density")]
    [InlineData(0.1, 3.7, 7, 0.5, 1, "net density")]
    [InlineData(0.1, 2.1, 0.9, 0.5, 1, "steepness")]
    [InlineData(0.1, 2.1, 31, 0.5, 1, "steepness")]
    [InlineData(0.1, 2.1, 7, -6.1, 1, "middle")]
    [InlineData(0.1, 2.1, 7, 8.1, 1, "middle")]
    [InlineData(0.1, 2.1, 7, 0.5, 0.1, "asymmetry")]
    [InlineData(0.1, 2.1, 7, 0.5, 5.1, "asymmetry")]
    public void A_curve(double min, double max, double steepness, double middle, double asymmetry, string why)
        => Refused(why, () => LogisticCurve.Create(PaperKind.NegativeWorking, D(min), D(max), steepness, middle, asymmetry));

    [Theory]
    [InlineData(2.1, 29, 2, 1, "ISO range")]
    [InlineData(2.1, 251, 2, 1, "ISO range")]
    [InlineData(2.1, 110, 0, 1, "anchor")]
    [InlineData(2.1, 110, 1e9, 1, "anchor")]
    [InlineData(0.3, 110, 2, 1, "net density")]
    [InlineData(2.1, 110, 2, 0, "asymmetry")]
    public void A_curve_by_its_range(double max, double range, double anchor, double asymmetry, string why)
        => Refused(why, () => LogisticCurve.FromRange(PaperKind.NegativeWorking, D(0.1), D(max), range, D(0.2), H(anchor), asymmetry));

    [Theory]
    [InlineData(0.06)]
    [InlineData(2.06)]
    [InlineData(0.01)]
    public void A_density_that_is_reached_in_the_limit_only(double density) => Refused("out of this paper's reach", () => Negative.ExposureFor(D(density)));

    [Theory]
    [InlineData(0, 1, "the exposure index")]
    [InlineData(1001, 1, "the exposure index")]
    [InlineData(double.NaN, 1, "the exposure index")]
    [InlineData(3, 0.0001, "the time")]
    [InlineData(3, 90_000, "the time")]
    public void An_index(double index, double seconds, string why) => Refused(why, () => ExposureIndex.Found(index, S(seconds), LightColour.Noon, MeterConstants.Usual));

    [Theory]
    [InlineData(0.0001)]
    [InlineData(90_000)]
    public void An_index_at_another_time(double seconds) => Refused(
        "the time of the exposure index",
        () => ExposureIndex.Found(3, S(10), LightColour.Noon, MeterConstants.Usual).At(S(seconds), SchwarzschildFailure.Assumed));

    [Theory]
    [InlineData(-0.1, 0.2, "the flash")]
    [InlineData(3.1, 0.2, "the flash")]
    [InlineData(1, 0.001, "the least slope")]
    [InlineData(1, 2.1, "the least slope")]
    public void A_flash(double fraction, double leastSlope, string why)
    {
        Refused(why, () => FlashEffect.TexturedRange(Negative, fraction, leastSlope));
        if (fraction is < 0 or > 3)
        {
            Refused(why, () => FlashEffect.Of(Negative, fraction));
        }
    }

    [Fact]
    public void No_light() => Refused(
        "no time is long enough",
        () => PaperResponse.Of(
            PhotographicPaper.FromSpeed(
                "box", PaperKind.NegativeWorking, D(0.06), D(2.06), 110, IsoPaperSpeed.FromValue(200), PaperSensitivity.BlueSensitive, SchwarzschildFailure.Assumed),
            LightColour.Noon).TimeFor(H(1), Illuminance.FromLux(0), 1));

    private static void Refused(string why, Func<object> act)
        => Assert.Contains(why, Assert.Throws<RefusalException>(act).Message, StringComparison.OrdinalIgnoreCase);
}
