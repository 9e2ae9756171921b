using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>A strip of 0.1 lx, p 0.9, at 1, 10 and 100 s: lg H −1, −0.1 and 0.8, and the failure's load 0, 1 and 2. Worked by hand.</summary>
public class StripRowsTests
{
    private static readonly Strip Three = new() { OnSheet = Lamp(0.1), Light = LightColour.Lamp, Times = [S(1), S(10), S(100)] };

    [Theory]
    [InlineData(1, "+1")]
    [InlineData(2, "+2 -1")]
    [InlineData(3, "+3 -2")]
    [InlineData(4, "-3")]
    public void A_first_tone_was_seen_on_its_patch_and_not_on_the_one_before(int step, string expected)
    {
        var rows = Eye(PaperKind.NegativeWorking, EyeReadingKind.FirstTone, step);
        Assert.Equal(expected, string.Join(' ', rows.Seen.Select(row => (row.Seen ? "+" : "-") + Patch(row.Second))));
        Assert.All(rows.Seen, row => Assert.Equal((double.NegativeInfinity, 0), row.First));
        Assert.Empty(rows.Patches);
    }

    [Theory]
    [InlineData(1, "+12 -23")]
    [InlineData(2, "+23")]
    [InlineData(3, "")]
    public void A_last_tone_was_told_from_the_next_patch_and_that_from_its_next_was_not(int step, string expected)
    {
        var rows = Eye(PaperKind.NegativeWorking, EyeReadingKind.LastTone, step);
        Assert.Equal(expected, string.Join(' ', rows.Seen.Select(row => (row.Seen ? "+" : "-") + Patch(row.First) + Patch(row.Second))));
    }

    // The eye is worse in the black, which on direct-positive paper is where the light is least.
    [Theory]
    [InlineData(PaperKind.NegativeWorking, 0.03, 0.06)]
    [InlineData(PaperKind.DirectPositive, 0.06, 0.03)]
    public void Thresholds_are_those_of_the_tone_at_that_end(PaperKind kind, double first, double last)
    {
        Assert.All(Eye(kind, EyeReadingKind.FirstTone, 2).Seen, row => Assert.Equal(first, row.Threshold));
        Assert.All(Eye(kind, EyeReadingKind.LastTone, 1).Seen, row => Assert.Equal(last, row.Threshold));
    }

    // Patches lie 0.9 apart in lg H; a match is uniform over one step, √(1/12) of it.
    [Theory]
    [InlineData(1, -1)]
    [InlineData(2, -0.1)]
    [InlineData(3, 0.8)]
    public void A_match_is_a_density_to_half_a_step(int step, double lgExposure)
    {
        var row = Assert.Single(Eye(PaperKind.NegativeWorking, EyeReadingKind.Match, step).Patches);
        Assert.Equal(lgExposure, row.LgExposure, 1e-9);
        Assert.Equal(0.7, row.Density);
        Assert.Equal(0.06, row.Spread);
        Assert.Equal(0.9 / Math.Sqrt(12), row.LgSpread, 1e-9);
    }

    // Between patches of 1, 4 and 64 s the steps are 0.9·lg 4 and 0.9·lg 16: the one on the side of less light counts, except at the first patch.
    [Theory]
    [InlineData(1, 4)]
    [InlineData(2, 4)]
    [InlineData(3, 16)]
    public void A_match_counts_the_step_beside_it(int step, double ratio)
    {
        var uneven = Three with { Times = [S(1), S(4), S(64)], Eye = [new EyeReading(EyeReadingKind.Match, step, D(0.7))] };
        Assert.Equal(0.9 * Math.Log10(ratio) / Math.Sqrt(12), Assert.Single(Rows(PaperKind.NegativeWorking, uneven).Patches).LgSpread, 1e-9);
    }

    [Fact]
    public void A_strip_of_one_patch_has_no_step()
        => Assert.Equal(0, Assert.Single(Rows(PaperKind.NegativeWorking, Three with { Times = [S(1)], Eye = [new EyeReading(EyeReadingKind.Match, 1, D(0.7))] }).Patches).LgSpread);

    [Fact]
    public void Densities_become_rows_with_the_doubt_of_their_times()
    {
        var strip = Three with
        {
            LightSpread = Stops.FromValue(0.5),
            Patches = [StripPatch.Masked(D(0.06), 0.02), StripPatch.FullyFogged(D(2.06), 0.03), StripPatch.Exposed(S(0.1), D(0.3), 0.04, S(0.01)), StripPatch.Exposed(S(100), D(1), 0.05)],
        };
        var rows = Rows(PaperKind.NegativeWorking, strip with { LightSpread = Stops.Zero }, strip);
        Assert.Equal(8, rows.Patches.Count);
        Assert.Equal(new PatchRow(1, double.NegativeInfinity, 0, 0.06, 0.02, 0), rows.Patches[4]);
        Assert.Equal(new PatchRow(1, double.PositiveInfinity, 0, 2.06, 0.03, 0), rows.Patches[5]);

        // A tenth of the time is 1/(10·ln 10) in lg; below a second failure has no load.
        Assert.Equal(-2, rows.Patches[6].LgExposure, 1e-9);
        Assert.Equal(0, rows.Patches[6].FailureLoad);
        Assert.Equal(0.0434294, rows.Patches[6].LgSpread, 1e-6);
        Assert.Equal(0.8, rows.Patches[7].LgExposure, 1e-9);
        Assert.Equal(2, rows.Patches[7].FailureLoad, 1e-9);
        Assert.Equal((-2, 0.8), (Math.Round(rows.Exposures.Least, 9), Math.Round(rows.Exposures.Most, 9)));

        // Light that is said to be known exactly still is a number with a spread; half a stop is 0.5·lg 2.
        Assert.InRange(rows.LightSpreads[0], 1e-9, 1e-4);
        Assert.Equal(0.150515, rows.LightSpreads[1], 1e-6);
    }

    [Fact]
    public void The_range_of_exposures_is_that_of_densities_and_judgements_together()
    {
        var strip = Three with { Patches = [StripPatch.Exposed(S(1), D(0.3), 0.04)], Eye = [new EyeReading(EyeReadingKind.FirstTone, 3)] };
        var (least, most) = Rows(PaperKind.NegativeWorking, strip).Exposures;
        Assert.Equal(-1, least, 1e-9);
        Assert.Equal(0.8, most, 1e-9);
        Assert.Equal((double.PositiveInfinity, double.NegativeInfinity), Rows(PaperKind.NegativeWorking, Three).Exposures);
    }

    [Fact]
    public void Light_of_another_colour_counts_by_its_actinic_factor()
    {
        var noon = Math.Log10(0.1 * Actinic.Factor(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive));
        Assert.Equal(noon, StripRows.LgLight(Three with { Light = LightColour.Noon }, PaperSensitivity.BlueSensitive), 1e-9);
    }

    private static string Patch((double LgExposure, double FailureLoad) at)
    {
        Assert.Equal(-1 + (0.9 * at.FailureLoad), at.LgExposure, 1e-9);
        return FormattableString.Invariant($"{at.FailureLoad + 1:0}");
    }

    private static StripRows Eye(PaperKind kind, EyeReadingKind reading, int step) => Rows(kind, Three with { Eye = [new EyeReading(reading, step, D(0.7))] });

    private static StripRows Rows(PaperKind kind, params Strip[] strips) => StripRows.Of(strips, kind, PaperSensitivity.BlueSensitive, SchwarzschildFailure.FromExponent(0.9));
}
