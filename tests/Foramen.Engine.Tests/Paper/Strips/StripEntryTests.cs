using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>What a person may write down of a strip, and what cannot be.</summary>
public class StripEntryTests
{
    private static readonly Strip Judged = new() { OnSheet = Lamp(0.1), Light = LightColour.Lamp, Times = [S(2), S(4), S(8)] };

    [Theory]
    [InlineData(EyeReadingKind.FirstTone, 1, true)]
    [InlineData(EyeReadingKind.FirstTone, 4, true)]
    [InlineData(EyeReadingKind.FirstTone, 5, false)]
    [InlineData(EyeReadingKind.FirstTone, 0, false)]
    [InlineData(EyeReadingKind.LastTone, 3, true)]
    [InlineData(EyeReadingKind.LastTone, 4, false)]
    [InlineData(EyeReadingKind.Match, 3, true)]
    [InlineData(EyeReadingKind.Match, 4, false)]
    public void An_eye_may_see_no_first_tone_but_reads_only_patches_that_are_there(EyeReadingKind kind, int step, bool may)
    {
        var strip = Judged with { Eye = [new EyeReading(kind, step, D(0.7))] };
        if (may)
        {
            strip.Check();
            Assert.Equal(step, Assert.Single(strip.Eye).Step);
        }
        else
        {
            Refused("the patch that was read by eye", strip.Check);
        }
    }

    [Fact]
    public void A_match_needs_its_grey()
        => Refused("needs the density of the grey", (Judged with { Eye = [new EyeReading(EyeReadingKind.Match, 2)] }).Check);

    [Fact]
    public void Times_that_do_not_rise_are_named_by_their_patches()
    {
        Refused("Patch 3 got no more light than patch 2", (Judged with { Times = [S(2), S(4), S(4)] }).Check);
        Refused("Patch 2 got no more light than patch 1", (Judged with { Times = [S(4), S(2), S(8)] }).Check);
        Refused("the time of patch 1", (Judged with { Times = [S(0.001), S(2)] }).Check);
        Refused("the time of patch 2", (Judged with { Times = [S(1), S(90_000)] }).Check);
    }

    [Fact]
    public void Light_and_patches_have_their_ranges()
    {
        Refused("the light on the strip", (Judged with { OnSheet = Illuminance.FromLux(0) }).Check);
        Refused("the spread of the light", (Judged with { LightSpread = Stops.FromValue(3.1) }).Check);
        Refused("the number of patches", (Judged with { Patches = [.. Enumerable.Repeat(StripPatch.Masked(D(0.1), 0.02), 501)] }).Check);
    }

    [Fact]
    public void Of_a_patch_time_and_spreads_have_their_ranges()
    {
        Refused("the time of a patch", () => StripPatch.Exposed(S(0.001), D(1), 0.02));
        Refused("the time of a patch", () => StripPatch.Exposed(S(90_000), D(1), 0.02));
        Refused("the spread of a patch's time", () => StripPatch.Exposed(S(2), D(1), 0.02, S(2.1)));
        Refused("the spread of a density", () => StripPatch.Exposed(S(2), D(1), 0.6));
        Assert.False(StripPatch.Exposed(S(2), D(1), 0.02).Fogged);
        Assert.False(StripPatch.Masked(D(1), 0.02).Fogged);
        Assert.True(StripPatch.FullyFogged(D(1), 0.02).Fogged);
    }

    [Fact]
    public void Of_a_flash_strip_too()
    {
        Refused("the number of patches", () => FlashStrip.Read([S(1)], 1, Lamp(0.1), LightColour.Lamp));
        Refused("the flash's light", () => FlashStrip.Read([S(1), S(2)], 2, Lamp(0), LightColour.Lamp));
        Refused("the time of patch 1", () => FlashStrip.Read([S(0.001), S(2)], 2, Lamp(0.1), LightColour.Lamp));
        Refused("Patch 3 got no more light than patch 2", () => FlashStrip.Read([S(1), S(2), S(2)], 2, Lamp(0.1), LightColour.Lamp));
        Refused("Patch 2 got no more light than patch 1", () => FlashStrip.Read([S(2), S(1), S(4)], 2, Lamp(0.1), LightColour.Lamp));
        Refused("the first patch that shows", () => FlashStrip.Read([S(1), S(2)], 4, Lamp(0.1), LightColour.Lamp));
        Refused("the first patch that shows", () => FlashStrip.Read([S(1), S(2)], 0, Lamp(0.1), LightColour.Lamp));
        Refused("a first patch of 0.5 s", () => FlashStrip.Read([S(4), S(8)], 1, Lamp(0.1), LightColour.Lamp));
    }

    // The same flash by noon light is worth as many lux seconds of the lamp as the actinic factor says; √32 s at p 0.9 are 32^0.45 metered seconds.
    [Fact]
    public void A_threshold_is_worth_its_light_times_its_metered_time()
    {
        var read = FlashStrip.Read([S(4), S(8)], 2, Lamp(0.1), LightColour.Noon);
        Assert.Equal(
            0.1 * Math.Pow(32, 0.45) * Actinic.Factor(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive),
            read.Effective(PaperSensitivity.BlueSensitive, SchwarzschildFailure.FromExponent(0.9)).LuxSeconds,
            1e-9);
    }

    // √(0.02² + (0.03·D)²), by hand.
    [Theory]
    [InlineData(0, 0.02)]
    [InlineData(1, 0.0360555)]
    [InlineData(2, 0.0632456)]
    public void A_scan_reads_the_blacks_worse(double density, double spread) => Assert.Equal(spread, DensityReading.ByScan(D(density)), 1e-6);

    private static void Refused(string why, Action act)
        => Assert.Contains(why, Assert.Throws<RefusalException>(act).Message, StringComparison.OrdinalIgnoreCase);
}
