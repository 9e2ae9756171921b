using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Exposure.ExposureExamples;

namespace Foramen.Engine.Tests.Exposure;

/// <summary>The best time on a sheet that already has its flash, against a search of all times.</summary>
public class GivenFlashTests
{
    private static readonly PlacedTone[] Tones =
        [Tone("doorway", Rendering.OpenShadow, 400), Tone("wall", Rendering.Mid, 2000), Tone("elevator", Rendering.TexturedHighlight, 7000)];

    [Theory]
    [InlineData(true, 1)]
    [InlineData(true, 4)]
    [InlineData(true, 12)]
    [InlineData(false, 1)]
    [InlineData(false, 4)]
    [InlineData(false, 12)]
    public void No_time_is_likelier_with_the_flash_as_it_was(bool positive, double flashSeconds)
    {
        var paper = positive ? Positive : Negative;
        var planner = Planner(paper, Tones, 10000);
        var flash = Duration.FromSeconds(flashSeconds);
        var planned = planner.LikeliestAfter(flash);
        Assert.Equal(flash, planned.Flash);
        var odds = planner.OddsFor(planned).Fraction;
        for (var stops = -2.0; stops <= 12; stops += 0.125)
        {
            var there = planner.OddsFor(new SheetExposure(Duration.FromSeconds(paper.Failure.SecondsNeeded(Math.Pow(2, stops))), flash)).Fraction;
            Assert.True(there <= odds + 0.005, $"{stops} stops: {there} > {odds}");
        }
    }

    [Fact]
    public void With_the_flash_that_is_likeliest_it_is_the_likeliest_exposure()
    {
        var planner = Planner(Positive, [Tone("doorway", Rendering.OpenShadow, 150), Tone("elevator", Rendering.TexturedHighlight, 8000)], 10000);
        var likeliest = planner.Likeliest();
        Assert.True(likeliest.Flash.Seconds > 0);
        Assert.Equal(planner.OddsFor(likeliest).Fraction, planner.OddsFor(planner.LikeliestAfter(likeliest.Flash)).Fraction, 0.005);
    }

    /// <summary>Light adds: what the flash has given need not come through the hole.</summary>
    [Fact]
    public void More_flash_on_the_sheet_never_asks_for_more_time()
    {
        var planner = Planner(Negative, Tones, 10000);
        var times = new[] { 0.0, 2, 4, 8 }.Select(flash => planner.LikeliestAfter(Duration.FromSeconds(flash)).Time.Seconds).ToArray();
        for (var i = 1; i < times.Length; i++)
        {
            // The climb's last step is a sixteenth of a stop.
            Assert.True(times[i] <= times[i - 1] * Math.Pow(2, 0.125), string.Join(", ", times));
        }
    }

    [Fact]
    public void A_flash_without_a_surface_is_refused()
        => Assert.Contains("meter the surface", Assert.Throws<RefusalException>(() => Planner(Positive, Tones).LikeliestAfter(Duration.FromSeconds(3))).Message, StringComparison.Ordinal);
}
