using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Exposure.ExposureExamples;

namespace Foramen.Engine.Tests.Exposure.PublishedValues;

/// <summary>
/// Full sun on a front-lit subject meters as t = 1/S s at f/16, a mid-tone of 256·K = 3200 cd/m² by ISO 2720 (the rule itself is common
/// practice); a sheet of EI about 3 behind an f/180 hole then wants about two minutes once failure and the corners are counted (common practice, no
/// source). The span is checked, not a single number.
/// </summary>
public class SunlitSheetTests
{
    private const double SunlitMidTone = 3200;

    // EI 4 to 8 at one second, p 0.85 to 0.90, and 1 to 1.3 stops for the corners: 60 to 240 s near f/200.
    [Theory]
    [InlineData(4, 0.90, 1.0, 200)]
    [InlineData(6, 0.85, 1.0, 200)]
    [InlineData(6, 0.90, 1.3, 214.286)]
    [InlineData(6, 0.85, 1.3, 214.286)]
    [InlineData(8, 0.85, 1.3, 200)]
    [Source("common-practice")]
    [Source("iso-2720", Basis.Worked)]
    public void Two_minutes_in_full_sun(double index, double exponent, double forTheCorners, double fNumber)
    {
        var paper = ExposureExamples.Positive with
        {
            Curve = PhotographicPaper.FromSpeed(
                "box", PaperKind.DirectPositive, Density.FromValue(0.08), Density.FromValue(1.98), 86,
                ExposureIndex.Found(index, Duration.FromSeconds(1), LightColour.Noon, MeterConstants.Usual),
                PaperSensitivity.BlueSensitive, SchwarzschildFailure.FromExponent(exponent)).Curve,
            Failure = SchwarzschildFailure.FromExponent(exponent),
        };
        var lux = Math.PI * SunlitMidTone / (4 * fNumber * fNumber) / Math.Pow(2, forTheCorners);
        var time = PaperResponse.Of(paper, LightColour.Noon)
            .TimeFor(paper.Curve.ExposureFor(Density.FromValue(0.7447)), Illuminance.FromLux(lux), 1);
        Assert.InRange(time.Seconds, 60, 240);

        // The same by the rule itself, worked by hand: ((N/16)²/S · 2^compensation)^(1/p).
        var byRule = Math.Pow(fNumber * fNumber / 256 / index * Math.Pow(2, forTheCorners), 1 / exponent);
        Assert.Equal(byRule, time.Seconds, byRule * 0.002);
    }

    // EI 3 found at one second, hole f/180, no compensation: (180/16)²/3 = 42.2 s metered, 64 s with p = 0.90.
    [Fact]
    [Source("iso-2720", Basis.Worked)]
    [Source("schwarzschild-1900", Basis.Worked)]
    public void The_solver_says_the_same_as_the_rule_for_one_mid_tone()
    {
        var paper = ExposureExamples.Paper(PaperKind.DirectPositive, 3, 1);
        var forecast = Planner(paper, [Tone("pump house wall", Rendering.Mid, SunlitMidTone)]).Recommend();
        Assert.Equal(Math.Pow(180.0 * 180 / 256 / 3, 1 / 0.9), forecast.Exposure.Time.Seconds, 0.3);
    }
}
