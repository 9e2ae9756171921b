using Foramen.Rehearsal;
using Foramen.Rehearsal.Insiders;
using Foramen.Rehearsal.Lines;
using Foramen.Rehearsal.Photographers;
using Foramen.Rehearsal.Worlds;

namespace Foramen.Cli.Tests.Insiders;

public class InsiderTests
{
    // Whatever is done to a sheet, the chances of all that can be said of it make one, less those of frame and motion.
    [Theory]
    [InlineData("mid", 60, 0)]
    [InlineData("openShadow", 900, 2)]
    [InlineData("texturedHighlight", 4, 0)]
    public void The_chances_of_all_that_can_be_said_of_a_sheet_make_one(string rendering, double seconds, double flash)
    {
        var truth = TruthOf(11);
        var sheet = new PlannedSheet(SheetOf(rendering), new ExposeLine { Seconds = seconds, FlashSeconds = flash });
        var sum = 0.0;
        foreach (var keeper in (bool[])[true, false])
        {
            sum += Math.Exp(SheetLikelihood.Log(truth, sheet, Judged(keeper, 0, "burnt")));
            sum += Math.Exp(SheetLikelihood.Log(truth, sheet, Judged(keeper, 0, "blocked")));
            for (var stops = -20.0; stops <= 20; stops += 0.5)
            {
                sum += Math.Exp(SheetLikelihood.Log(truth, sheet, Judged(keeper, stops, null)));
            }
        }

        Assert.Equal((1 - truth.FrameMiss) * (1 - truth.MotionMiss), sum, 0.001);
    }

    // A world that is known: its odds are what its sheets do. Three worlds of 400 sheets; three standard deviations, and three hundredths for what the sums leave out.
    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(14)]
    public void Who_guesses_the_very_world_states_odds_that_come_true(long seed)
    {
        var world = (HiddenWorld)WorldMaker.Make(seed, 1, WorldFamily.Usual);
        var (stated, kept, variance) = (0.0, 0, 0.0);
        const int Sheets = 400;
        for (var i = 0; i < Sheets; i++)
        {
            var seen = world.Next();
            var done = new ExposeLine { Seconds = Math.Pow(2, (i % 10) + 1) * seen.Label.AtSeconds / 32 };
            var odds = SheetLikelihood.Kept(world.Truth, new PlannedSheet(seen, done));
            (stated, variance) = (stated + odds, variance + (odds * (1 - odds)));
            kept += world.Expose(done).Keeper ? 1 : 0;
        }

        Assert.InRange(kept - stated, (-3 * Math.Sqrt(variance)) - (0.03 * Sheets), (3 * Math.Sqrt(variance)) + (0.03 * Sheets));
    }

    // Simulation-based calibration (Talts, Betancourt, Simpson, Vehtari and Gelman, arXiv 1804.06788, 2018; from memory): among guesses that are spread as the posterior is,
    // the truth has any rank as often as any other. Of 60 worlds the mean rank lies within four standard deviations of the middle, and their variance of a twelfth.
    [Fact]
    public void The_truth_has_any_rank_among_the_guesses_as_often_as_any_other()
    {
        var ranks = new double[60];
        for (var w = 0; w < ranks.Length; w++)
        {
            var world = (HiddenWorld)WorldMaker.Make(77, w + 1, WorldFamily.Usual);
            var (guesses, sky) = ((Guesses?)null, 0);
            for (var i = 0; i < 3; i++)
            {
                var seen = world.Next();
                guesses ??= new Guesses(WorldLabel.Read(seen.Label), WorldFamily.Usual, 80, new Chance(5, w));
                var sheet = new PlannedSheet(seen, new ExposeLine { Seconds = seen.Label.AtSeconds * (1 + i) });
                guesses.Learn(sheet, world.Expose(sheet.Done));
                sky = sheet.Sky;
            }

            double Exposure(WorldTruth truth) => truth.Stops(sky, 3, -truth.MeterBias, 60) - truth.BandOf("mid")!.Value.Aim;
            var mine = Exposure(world.Truth);
            ranks[w] = guesses!.All.Count(guess => Exposure(guess.Truth) < mine) / (double)guesses.All.Count;
        }

        var mean = ranks.Average();
        var variance = ranks.Sum(rank => (rank - 0.5) * (rank - 0.5)) / ranks.Length;
        Assert.InRange(mean, 0.5 - (4 / Math.Sqrt(12 * ranks.Length)), 0.5 + (4 / Math.Sqrt(12 * ranks.Length)));

        // The variance of (rank − ½)² for a flat rank is 1/180.
        Assert.InRange(variance, (1 / 12.0) - (4 / Math.Sqrt(180 * ranks.Length)), (1 / 12.0) + (4 / Math.Sqrt(180 * ranks.Length)));
    }

    [Fact]
    public void The_numbers_of_a_world_settle_it_and_the_middle_ones_give_the_middle()
    {
        var label = WorldLabel.Draw(new Chance(1));
        var truth = WorldTruth.Draw(label, WorldFamily.Usual, new GivenChance(new double[GivenChance.Length]));
        Assert.Equal(0, truth.MeterBias);
        Assert.Equal(0, truth.FlashBias);
        Assert.Equal(0.22, truth.SheetScatter, 6);
        Assert.Equal(0.14, truth.ReadingScatter, 6);
        Assert.Equal(0.035, truth.FrameMiss, 6);
    }

    [Fact]
    public void Odds_are_odds_and_the_time_is_one_that_can_be_given()
    {
        var world = WorldMaker.Make(21, 1, WorldFamily.Usual);
        var insider = new Insider(WorldFamily.Usual, new Chance(3));
        for (var i = 0; i < 3; i++)
        {
            var seen = world.Next();
            var done = insider.Decide(seen);
            Assert.InRange(done.Seconds, 0.1, 30_000);
            Assert.InRange(done.FlashSeconds, 0, done.Seconds * 10);
            Assert.InRange(done.Odds!.Value, 0, 1);
            insider.Learn(seen, done, world.Expose(done));
        }
    }

    private static WorldTruth TruthOf(long seed)
    {
        var chance = new Chance(seed);
        return WorldTruth.Draw(WorldLabel.Draw(chance), WorldFamily.Usual, chance);
    }

    private static SheetLine SheetOf(string rendering) => new()
    {
        Number = 1,
        Sky = "overcast",
        FNumber = WorldTruth.FNumber,
        Label = TruthOf(11).Label.Seen,
        Tones = [new ToneSeen { Name = "wall", Rendering = rendering, Ev = 12.5 }],
        CardEv = 14.7,
    };

    private static JudgedLine Judged(bool keeper, double stops, string? lost) => new()
    {
        Keeper = keeper,
        Tones = [new ToneJudged { Name = "wall", LighterByStops = stops, Lost = lost }],
        Causes = [],
    };
}
