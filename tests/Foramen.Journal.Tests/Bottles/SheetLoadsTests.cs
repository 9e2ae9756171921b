using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Kit;
using Foramen.Journal.Tests.TestKit;
using static Foramen.Journal.Tests.Bottles.BottleExamples;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Bottles;

public class SheetLoadsTests
{
    private static readonly Ulid Pictured = Id(32_000);

    private static readonly PlanMade Plan = new()
    {
        Sheet = Pictured, ExposureSeconds = 60,
        Tones = [new PlannedTone { Tone = Id(1), Density = 0.48, FromAimStops = 0 }, new PlannedTone { Tone = Id(2), Density = 1.08, FromAimStops = 0.5 }],
    };

    [Fact]
    public void The_planned_tones_say_the_density_above_white()
    {
        // (0.48 + 1.08)/2 less the paper's white of 0.08.
        var load = Load("negative", Plan);
        Assert.Equal(0.70, load.MeanDensity.Value, 1e-9);
        Assert.Equal(DensitySource.Predicted, load.Source);
        Assert.Equal(0.01, load.Area.SquareMetres, 1e-12);
    }

    [Theory]
    [InlineData("negative")]
    [InlineData("directPositive")]
    public void A_print_judged_lighter_took_less_and_a_darker_one_more(string kind)
    {
        var asPlanned = Load(kind, Plan).MeanDensity;
        var lighter = Load(kind, Plan, Judged(2));
        Assert.Equal(DensitySource.Judged, lighter.Source);
        Assert.True(lighter.MeanDensity < asPlanned);
        Assert.True(Load(kind, Plan, Judged(-2)).MeanDensity > asPlanned);
    }

    [Fact]
    public void A_print_judged_as_predicted_is_as_predicted()
    {
        // On a negative-working paper half a stop more than the aim is half a stop darker.
        var judged = new PrintJudged
        {
            Sheet = Pictured, Keeper = true, Tones = [new JudgedTone { Tone = Id(1), LighterByStops = 0 }, new JudgedTone { Tone = Id(2), LighterByStops = -0.5 }],
        };
        Assert.Equal(Load("negative", Plan).MeanDensity.Value, Load("negative", Plan, judged).MeanDensity.Value, 1e-9);
    }

    // Said of the one tone: as predicted, so it does not move, and the other with it. Said of the print as a whole: the last word counts, but not for a tone with a word of its own.
    [Fact]
    public void Tones_without_a_verdict_move_as_those_with_one()
    {
        var asPlanned = Load("negative", Plan).MeanDensity.Value;
        PrintJudged Said(params JudgedTone[] tones) => new() { Sheet = Pictured, Keeper = true, Tones = tones };
        JudgedTone Of(int tone, double lighter) => new() { Tone = Id(tone), LighterByStops = lighter };
        JudgedTone Whole(double lighter) => new() { LighterByStops = lighter };
        double Density(params JudgedTone[] tones) => Load("negative", Plan, Said(tones)).MeanDensity.Value;

        Assert.Equal(asPlanned, Density(Of(1, 0)), 1e-9);
        Assert.Equal(Density(Of(1, 1), Of(2, 0.5)), Density(Of(1, 1)), 1e-9);
        Assert.Equal(Density(Of(1, 1), Of(2, -0.5)), Density(Whole(3), Whole(-0.5), Of(1, 1)), 1e-9);
        Assert.Equal(Density(Whole(2)), Density(Whole(-1), Whole(2)), 1e-9);
        Assert.Equal(Density(Of(1, 1), Of(2, 0)), Density(Of(1, 2), Of(1, 1), Of(2, 0)), 1e-9);
        Assert.NotEqual(Density(Of(1, 1), Of(2, 0)), Density(Of(1, 1), Of(2, 1)), 0.01);
        Assert.Equal(DensitySource.Predicted, Load("negative", Plan, Said(Of(9, 1))).Source);
    }

    // Whatever is said, no tone is lighter than the paper's white of 0.08 nor darker than its black of 1.98, 1.90 above it.
    [Theory]
    [InlineData(10, 0.0)]
    [InlineData(-10, 1.90)]
    public void A_tone_cannot_leave_the_papers_range(double lighter, double density)
        => Assert.Equal(density, Load("negative", Plan, Judged(lighter)).MeanDensity.Value, 0.02);

    // A tone foretold as the paper's very white or black has no exposure of its own; white that came out lighter still is white.
    [Theory]
    [InlineData(0.08, 2, 0.02)]
    [InlineData(1.98, -2, 0.02)]
    [InlineData(0.08, 0, 1e-9)]
    [InlineData(1.98, 0, 1e-9)]
    public void A_tone_at_an_end_of_the_curve_stays_there(double end, double lighter, double tolerance)
    {
        var plan = Plan with { Tones = [new PlannedTone { Tone = Id(1), Density = end, FromAimStops = 0 }] };
        Assert.Equal(end - 0.08, Load("negative", plan, Judged(lighter)).MeanDensity.Value, tolerance);
    }

    [Fact]
    public void A_paper_that_cannot_be_computed_with_foretells_nothing()
    {
        var load = Load(PaperReading.Unknown("box", "negative") with { Speed = new SpeedDefinition() }, Plan);
        Assert.Equal((DensitySource.Assumed, 0.7), (load.Source, load.MeanDensity.Value));
    }

    [Fact]
    public void Without_plan_or_paper_the_usual_density_is_assumed()
    {
        Assert.Equal(DensitySource.Assumed, Load("negative").Source);
        Assert.Equal(0.7, Load("negative").MeanDensity.Value);
    }

    private static PrintJudged Judged(double lighter)
        => new() { Sheet = Pictured, Keeper = true, Tones = [new JudgedTone { LighterByStops = lighter }] };

    private static SheetLoad Load(string kind, params EntryBody[] bodies) => Load(PaperReading.Unknown("box", kind), bodies);

    private static SheetLoad Load(PaperDefinition paper, params EntryBody[] bodies)
    {
        var ledger = Folded(
            [
                Square,
                new PaperDefined { Paper = OneOfEach.Paper, Definition = paper },
                new SheetStarted { Sheet = Pictured, Camera = CameraId, Paper = OneOfEach.Paper },
                .. bodies,
            ]);
        return new SheetLoads(ledger, Density.FromValue(0.7)).Of(ledger.Sheets.Find(Pictured), null);
    }
}
