using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>What a strip cannot tell is refused, and the strip that would tell it is named.</summary>
public class StripRefusalTests
{
    [Theory]
    [InlineData(0.0005, "too little light")]
    [InlineData(200, "too much light")]
    public void A_strip_that_is_all_alike(double lux, string why)
    {
        var message = Refusal(PaperKind.NegativeWorking, Of(Negative, lux, 4, 0.5, 6));
        Assert.Contains(why, message, StringComparison.Ordinal);
        Assert.Contains("Make next a strip of", message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strip_that_leaps_from_end_to_end()
    {
        var message = Refusal(PaperKind.NegativeWorking, Of(Negative, 0.15, 1.6, 6, 3));
        Assert.Contains("between two patches", message, StringComparison.Ordinal);
        Assert.Contains("Make next a strip of", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_in_reverse_order()
    {
        var strip = Of(Negative, 0.1, 4, 0.5, 9);
        var lit = strip.Patches.Skip(1).ToList();
        var reversed = lit.Select((patch, i) => StripPatch.Exposed(patch.Time, lit[^(i + 1)].Density, 0.02));
        Assert.Contains("reverse order", Refusal(PaperKind.NegativeWorking, strip with { Patches = [.. reversed] }), StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_in_disorder()
    {
        var strip = Of(Negative, 0.1, 4, 0.5, 9);
        var lit = strip.Patches.Skip(1).ToList();
        int[] order = [2, 0, 5, 1, 7, 3, 8, 4, 6];
        var mixed = lit.Select((patch, i) => StripPatch.Exposed(patch.Time, lit[order[i]].Density, 0.02));
        Assert.Contains("out of order", Refusal(PaperKind.NegativeWorking, strip with { Patches = [.. mixed] }), StringComparison.Ordinal);
    }

    [Fact]
    public void A_toe_without_a_mid_tone()
        => Assert.Contains("No patch got enough light", Refusal(PaperKind.NegativeWorking, Of(Negative, 0.045, 4, 0.5, 7)), StringComparison.Ordinal);

    [Fact]
    public void Two_patches()
        => Assert.Contains("at least 3", Refusal(PaperKind.NegativeWorking, Of(Negative, 0.1, 10, 1, 2)), StringComparison.Ordinal);

    [Fact]
    public void A_range_whose_ends_were_not_reached_is_not_stated()
    {
        var fit = Fit(PaperKind.NegativeWorking, Of(Negative, 0.1, 12, 0.5, 5));
        Assert.Null(fit.Range);
        Assert.NotNull(fit.Speed);
    }

    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(double.NaN, 0.5)]
    [InlineData(1, double.PositiveInfinity)]
    [InlineData(1, -1)]
    public void Absurd_light(double lux, double spread) => Assert.Throws<RefusalException>(() => Fit(
        PaperKind.NegativeWorking,
        Of(Negative, 0.1, 4, 0.5, 9) with { OnSheet = Illuminance.FromLux(lux), LightSpread = Stops.FromValue(spread) }));

    private static string Refusal(PaperKind kind, Strip strip)
        => Assert.Throws<RefusalException>(() => StripFit.Of([strip], kind, PaperSensitivity.BlueSensitive)).Message;
}
