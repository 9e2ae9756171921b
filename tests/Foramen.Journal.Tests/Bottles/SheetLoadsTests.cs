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

    [Fact]
    public void Without_plan_or_paper_the_usual_density_is_assumed()
    {
        Assert.Equal(DensitySource.Assumed, Load("negative").Source);
        Assert.Equal(0.7, Load("negative").MeanDensity.Value);
    }

    private static PrintJudged Judged(double lighter)
        => new() { Sheet = Pictured, Keeper = true, Tones = [new JudgedTone { LighterByStops = lighter }] };

    private static SheetLoad Load(string kind, params EntryBody[] bodies)
    {
        var ledger = Folded(
            [
                Square,
                new PaperDefined { Paper = OneOfEach.Paper, Definition = PaperReading.Unknown("box", kind) },
                new SheetStarted { Sheet = Pictured, Camera = CameraId, Paper = OneOfEach.Paper },
                .. bodies,
            ]);
        return new SheetLoads(ledger, Density.FromValue(0.7)).Of(ledger.Sheets.Find(Pictured), null);
    }
}
