using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bottles;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Tests.Bottles;

public class DeveloperReadingTests
{
    // A capacity of 4 m²/l keeps the handbooks' bounds, 4 and 8 about 5.7: 4·4/5.7 = 2.807 and 4·8/5.7 = 5.614. A Q10 of 2.2 makes 10 °C take 2.2 times as long, whatever else is believed.
    [Fact]
    public void What_is_written_down_is_what_is_computed_with()
    {
        var profile = new DeveloperDefinition
        {
            TimeSeconds = 100, MinimumSeconds = 80, Q10 = 2.2, CapacitySquareMetresPerLitre = 4, ActivityLimit = 0.7, AppearanceFactor = 6,
            OpenLossPerHour = 0.03, ClosedLossPerDay = 0.002, KnownDays = 10,
        }.ToProfile();
        Assert.Equal((100, 80), (profile.Time.Seconds, profile.Minimum.Seconds));
        Assert.Equal((0.7, 6, 0.03, 0.002), (profile.ActivityLimit, profile.AppearanceFactor, profile.OpenLossPerHour, profile.ClosedLossPerDay));
        Assert.Equal(864_000, profile.KnownAge.Seconds);
        var capacity = profile.CapacitySquareMetresPerLitre;
        Assert.Equal((2.807, 4.0, 5.614), (Math.Round(capacity.Low, 3), Math.Round(capacity.Middle, 9), Math.Round(capacity.High, 3)));
        foreach (var law in new[] { profile.Temperatures.Low, profile.Temperatures.Middle, profile.Temperatures.High })
        {
            Assert.Equal(2.2, law.TimeFactor(Temperature.FromCelsius(10)), 1e-12);
        }
    }

    [Fact]
    public void What_is_missing_is_common_practice()
    {
        Assert.Equal(DeveloperProfile.Paper, ((DeveloperDefinition?)null).ToProfile());
        Assert.Equal(DeveloperProfile.Paper, new DeveloperDefinition().ToProfile());
        Assert.Equal(75, new DeveloperDefinition().ToProfile().Time.Seconds);
        Assert.Equal(30 * 86_400, new DeveloperDefinition().ToProfile().KnownAge.Seconds);
    }

    [Theory]
    [InlineData(null, FixerKind.AmmoniumPaper)]
    [InlineData("ammoniumPaper", FixerKind.AmmoniumPaper)]
    [InlineData("ammoniumStrong", FixerKind.AmmoniumStrong)]
    [InlineData("sodium", FixerKind.Sodium)]
    public void A_fixer_is_of_the_kind_said(string? said, FixerKind kind)
    {
        Assert.Equal(kind, new FixerDefinition { Kind = said }.ToKind());
        Assert.Equal(FixerKind.AmmoniumPaper, ((FixerDefinition?)null).ToKind());
    }

    [Fact]
    public void A_fixer_may_be_used_as_far_as_said()
    {
        var limits = new FixerDefinition { SilverLimitGramsPerLitre = 1, AreaLimitSquareMetresPerLitre = 2 }.ToLimits();
        Assert.Equal((1, 2), (limits.SilverGramsPerLitre, limits.SquareMetresPerLitre));
        var usual = new FixerDefinition().ToLimits();
        Assert.Equal((2, 2.73), (usual.SilverGramsPerLitre, usual.SquareMetresPerLitre));
        Assert.Equal(usual, ((FixerDefinition?)null).ToLimits());
        Assert.Equal(
            "The kind of fixer is “salt”; it should be ammoniumStrong, ammoniumPaper or sodium.",
            Assert.Throws<RefusalException>(() => new FixerDefinition { Kind = "salt" }.ToKind()).Message);
    }
}
