using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Tests.Kit;

public class PaperReadingTests
{
    private static readonly SpeedDefinition Index = new() { ExposureIndex = 3, AtSeconds = 120 };

    private static readonly PaperDefinition Box = new() { Name = "box 1", Kind = "negative", Speed = Index };

    [Fact]
    public void What_is_written_down_is_what_is_computed_with()
    {
        var paper = (Box with
        {
            Kind = "directPositive",
            DMin = 0.1,
            DMax = 1.8,
            IsoRange = 80,
            Asymmetry = 0.7,
            Sensitivity = "variableContrast",
            Speed = Index with { SdStops = 0.5, LightKelvin = 3000 },
            Failure = new FailureDefinition { Law = "schwarzschild", Exponent = 0.85, ExponentSd = 0.02 },
        }).ToPaper();
        Assert.Equal(("box 1", PaperKind.DirectPositive), (paper.Name, paper.Kind));
        Assert.Equal((0.1, 1.8), (paper.Curve.MinimumDensity.Value, paper.Curve.MaximumDensity.Value));
        Assert.Equal(80, IsoPaperMeasures.Of(paper.Curve).Range, 0.1);
        Assert.Equal(0.7, Assert.IsType<LogisticCurve>(paper.Curve).Asymmetry);
        Assert.Equal(LightColour.FromTemperature(ColourTemperature.FromKelvin(3000)), paper.SpeedFoundIn);
        Assert.Equal(PaperSensitivity.VariableContrast, paper.Sensitivity);
        Assert.Equal((0.5, 0.02), (paper.SpeedSpread.Value, paper.FailureSpreadPerDoubling));
        Assert.Equal(120, paper.SpeedFoundAt.Seconds);

        // A hundred seconds are worth 100^0.85 = 50.12.
        Assert.Equal(50.12, paper.Failure.MeteredSecondsFor(100), 0.005);
    }

    [Theory]
    [InlineData("negative", 110)]
    [InlineData("directPositive", 90)]
    public void What_is_missing_is_assumed(string kind, double range)
    {
        var paper = (Box with { Kind = kind }).ToPaper();
        Assert.Equal((0.08, 1.98), (paper.Curve.MinimumDensity.Value, paper.Curve.MaximumDensity.Value));
        Assert.Equal(range, IsoPaperMeasures.Of(paper.Curve).Range, 0.1);
        Assert.Equal(PaperSensitivity.BlueSensitive, paper.Sensitivity);
        Assert.Equal((0.35, 0.05), (paper.SpeedSpread.Value, paper.FailureSpreadPerDoubling));
        Assert.Equal(SchwarzschildFailure.FromExponent(0.9), paper.Failure);
        Assert.Equal((Box with { Kind = kind, Speed = Index with { LightKelvin = 5500 } }).ToPaper().Curve.DensityAtLg(0), paper.Curve.DensityAtLg(0), 1e-12);
    }

    // A paper twice as fast needs half the exposure for the same density.
    [Fact]
    public void An_iso_speed_is_one_over_the_exposure()
    {
        double At(double speed) => (Box with { Speed = new SpeedDefinition { IsoSpeed = speed } }).ToPaper().Curve.ExposureFor(Density.FromValue(0.68)).LuxSeconds;
        Assert.Equal(2, At(100) / At(200), 1e-9);
    }

    [Theory]
    [InlineData("negative")]
    [InlineData("directPositive")]
    public void An_unknown_paper_has_values_to_start_from(string kind)
    {
        var unknown = PaperReading.Unknown("box 2", kind);
        var paper = unknown.ToPaper();
        Assert.Equal(("box 2", kind), (unknown.Name, unknown.Kind));
        Assert.Equal(0.8, paper.SpeedSpread.Value);
        Assert.Equal(kind == "negative" ? 60 : 120, paper.SpeedFoundAt.Seconds);
    }

    [Fact]
    public void Each_law_of_failure_is_read()
    {
        FailureLaw Law(FailureDefinition failure) => (Box with { Failure = failure }).ToPaper().Failure;
        Assert.Equal(1.5, Law(new FailureDefinition { Law = "additivePower", ExtraSecondsAtOneSecond = 0.5 }).SecondsNeeded(1), 1e-9);
        var table = Law(new FailureDefinition { Law = "table", Rows = [[10, 12], [100, 200]] });
        Assert.Equal((12, 200), (Math.Round(table.SecondsNeeded(10), 9), Math.Round(table.SecondsNeeded(100), 9)));
        Refused("A row of the failure table should hold two numbers: metered seconds and seconds needed.", Box with { Failure = new FailureDefinition { Law = "table", Rows = [[10, 12, 3]] } });
        const string Lacks = " is unknown or lacks its number; use schwarzschild with an exponent, additivePower with extraSecondsAtOneSecond, or table with rows.";
        Refused("The failure law \"guess\"" + Lacks, Box with { Failure = new FailureDefinition { Law = "guess", Exponent = 0.9 } });
        Refused("The failure law \"schwarzschild\"" + Lacks, Box with { Failure = new FailureDefinition { Law = "schwarzschild" } });
        Refused("The failure law \"additivePower\"" + Lacks, Box with { Failure = new FailureDefinition { Law = "additivePower" } });
        Refused("The failure law \"table\"" + Lacks, Box with { Failure = new FailureDefinition { Law = "table" } });
    }

    [Fact]
    public void A_speed_is_one_number_with_what_makes_it_mean_something()
    {
        Refused(
            "The paper's exposure index comes without the time it was found at; say the seconds, because failure makes it another number at another time.",
            Box with { Speed = new SpeedDefinition { ExposureIndex = 3 } });
        Refused("The paper has both an ISO speed and an exposure index; keep the one that was measured.", Box with { Speed = Index with { IsoSpeed = 200 } });
        Refused("The paper has no speed; give its ISO paper speed, or an exposure index and the time it was found at.", Box with { Speed = new SpeedDefinition() });
    }

    [Fact]
    public void Words_and_numbers_that_cannot_be_are_refused()
    {
        Refused("The paper's kind is \"film\"; it should be negative or directPositive.", Box with { Kind = "film" });
        Refused("The paper's sensitivity is \"red\"; it should be blue or variableContrast.", Box with { Sensitivity = "red" });
        Refused("The spread of the paper's speed is 5 stops; it should be between 0 and 4 stops.", Box with { Speed = Index with { SdStops = 5 } });
        Refused(
            "The spread of the failure exponent is 0.6; it should be between 0 and 0.5.",
            Box with { Failure = new FailureDefinition { Law = "schwarzschild", Exponent = 0.9, ExponentSd = 0.6 } });
        Assert.Equal(PaperSensitivity.BlueSensitive, (Box with { Sensitivity = "blue" }).ToPaper().Sensitivity);
    }

    private static void Refused(string sentence, PaperDefinition definition)
        => Assert.Equal(sentence, Assert.Throws<RefusalException>(definition.ToPaper).Message);
}
