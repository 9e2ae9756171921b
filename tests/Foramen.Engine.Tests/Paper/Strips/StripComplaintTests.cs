using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>Where a strip is enough and where it is not: densities at the border of each complaint.</summary>
public class StripComplaintTests
{
    [Theory]
    [InlineData(1, "has 1 exposed patch with")]
    [InlineData(2, "has 2 exposed patches with")]
    public void Too_few_patches_are_counted(int count, string why) => Refused(why, PaperKind.NegativeWorking, Of(Negative, 0.1, 28, 1, count));

    [Fact]
    public void Three_patches_about_the_mid_tone_are_enough()
    {
        var speed = Fit(PaperKind.NegativeWorking, Of(Negative, 0.1, 10, 1.5, 3)).Speed!.Value;
        Assert.InRange(500, speed.Low, speed.High);
    }

    [Fact]
    public void A_first_and_a_last_tone_alone_are_read_too()
    {
        // The curve has its first tone of 0.04 at 0.56 lx s and is near its black at 10; between them lies the mid-tone.
        var times = Enumerable.Range(0, 11).Select(i => S(4 * Math.Pow(2, 0.5 * i))).ToArray();
        var strip = new Strip
        {
            OnSheet = Lamp(0.1),
            Light = LightColour.Lamp,
            Times = times,
            Eye = [new EyeReading(EyeReadingKind.FirstTone, 3), new EyeReading(EyeReadingKind.LastTone, 9)],
        };
        var index = Fit(PaperKind.NegativeWorking, strip).Index;
        Assert.InRange(index.At.Seconds, times[2].Seconds, times[8].Seconds);
    }

    [Theory]
    [InlineData(PaperKind.NegativeWorking, "which negative-working paper does not do")]
    [InlineData(PaperKind.DirectPositive, "which direct-positive paper does not do")]
    public void Three_patches_in_reverse_order_are_too(PaperKind kind, string why)
    {
        CharacteristicCurve other = kind == PaperKind.NegativeWorking ? Positive : Negative;
        Refused(why, kind, Of(other, 0.1, 12, 1.5, 3));
    }

    // Four patches of white that fall by the noise of reading are not in reverse order: they are all white.
    [Theory]
    [InlineData(PaperKind.NegativeWorking, new[] { 0.10, 0.09, 0.08, 0.07 }, "far too little light")]
    [InlineData(PaperKind.NegativeWorking, new[] { 0.50, 0.49, 0.52, 0.51 }, "far too little light")]
    [InlineData(PaperKind.NegativeWorking, new[] { 2.00, 1.99, 1.98, 1.97 }, "far too much light")]
    [InlineData(PaperKind.DirectPositive, new[] { 0.07, 0.08, 0.09, 0.10 }, "far too much light")]
    [InlineData(PaperKind.DirectPositive, new[] { 0.51, 0.52, 0.49, 0.50 }, "far too much light")]
    [InlineData(PaperKind.DirectPositive, new[] { 1.97, 1.98, 1.99, 2.00 }, "far too little light")]
    public void Patches_that_are_all_alike(PaperKind kind, double[] densities, string why) => Refused(why, kind, Read(densities, 0.02));

    [Theory]
    [InlineData(0.1, 120, "Every patch got more light than a mid-tone needs")]
    [InlineData(0.1, 2.5, "No patch got enough light for a mid-tone")]
    public void A_strip_that_lies_beside_the_mid_tone(double lux, double first, string why)
        => Refused(why, PaperKind.NegativeWorking, Of(Negative, lux, first, 0.5, 6));

    // 0.1 lx for 28.5 s are just over 2 lx s.
    [Fact]
    public void A_strip_that_ends_at_the_mid_tone_is_enough()
    {
        var speed = Fit(PaperKind.NegativeWorking, Of(Negative, 0.1, 28.5 / Math.Pow(2, 2.5), 0.5, 6)).Speed!.Value;
        Assert.InRange(500, speed.Low, speed.High);
    }

    [Fact]
    public void Readings_that_nobody_can_rely_on_leave_the_speed_open()
        => Refused("leave the speed open by ±", PaperKind.NegativeWorking, Of(Negative, 0.1, 10, 1.5, 3, spread: 0.5));

    [Fact]
    public void Light_that_is_known_badly_is_no_fault_of_the_patches()
        => Assert.InRange(Fit(PaperKind.NegativeWorking, Of(Negative, 0.1, 4, 0.5, 11, lightSpread: 2)).Index.Spread.Value, 1.7, 2.1);

    [Fact]
    public void Two_misread_patches_of_twelve_do_not_spoil_the_strip()
    {
        var strip = Of(Negative, 0.1, 4, 0.5, 12);
        var misread = strip.Patches.Select((patch, i) => i is 4 or 9 ? StripPatch.Exposed(patch.Time, D(patch.Density.Value + (i == 4 ? 0.4 : -0.6)), 0.02) : patch);
        var fit = Fit(PaperKind.NegativeWorking, strip with { Patches = [.. misread] });
        Assert.Equal(0, Math.Log2(fit.Speed!.Value.Value / 500), 0.2);
        Assert.Equal([4, 9], Enumerable.Range(0, 13).OrderBy(i => fit.FittedPatches[i].Trust).Take(2).Order());
    }

    // Points T and S of the curve lie at 0.56 and 7.1 lx s; half a stop beyond the patches is allowed.
    [Theory]
    [InlineData(5.5, 7, false)]
    [InlineData(17, 9, false)]
    [InlineData(5.5, 11, true)]
    public void The_range_is_stated_where_both_ends_are_reached(double first, int count, bool stated)
        => Assert.Equal(stated, Fit(PaperKind.NegativeWorking, Of(Negative, 0.1, first, 0.5, count)).Range is not null);

    private static Strip Read(double[] densities, double spread) => new()
    {
        OnSheet = Lamp(0.1),
        Light = LightColour.Lamp,
        Patches = [.. densities.Select((density, i) => StripPatch.Exposed(S(4 * Math.Pow(2, i)), D(density), spread))],
    };

    private static void Refused(string why, PaperKind kind, Strip strip)
        => Assert.Contains(why, Assert.Throws<RefusalException>(() => StripFit.Of([strip], kind, PaperSensitivity.BlueSensitive)).Message, StringComparison.Ordinal);
}
