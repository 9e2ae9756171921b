using CsCheck;
using Foramen.Engine.Light;
using static Foramen.Engine.Tests.Light.Skies;

namespace Foramen.Engine.Tests.Light;

public class MoonTests
{
    [Fact]
    public void The_lit_part_goes_with_the_elongation() => GenInstant.Sample(instant =>
    {
        var phase = Moon.PhaseAt(instant);
        Assert.InRange(phase.LitFraction, 0, 1);

        // Lit fraction is (1 − cos elongation)/2 but for the Sun's finite distance and the Moon's latitude, together under 0.01.
        Assert.Equal((1 - Math.Cos(phase.Elongation.Radians)) / 2, phase.LitFraction, 0.01);

        // Hours around new and full the Moon's latitude decides, not the elongation.
        if (phase.LitFraction is > 0.01 and < 0.99)
        {
            Assert.Equal(Moon.PhaseAt(instant.AddMinutes(10)).LitFraction > phase.LitFraction, phase.Waxing);
        }
    });

    [Fact]
    public void The_moon_keeps_its_distance() => GenInstant.Sample(instant =>
        Assert.InRange(Moon.Distance(instant).Metres / 1000, 356300, 406800));

    // The light of a full moon on the ground in clear air is up to about 0.3 lx (C. Kyba et al., Astronomy & Geophysics 58, 1.31, 2017);
    // a half moon gives about a tenth (C. W. Allen, Astrophysical Quantities, magnitudes −12.7 and −10.2; from memory).
    [Fact]
    [Source("kyba-2017")]
    [Source("allen-1973", "magnitudes of the Moon", Basis.Memory)]
    public void Moonlight_has_its_usual_size()
    {
        var place = GeographicPosition.FromDegrees(0, 0);
        var night = new DateTimeOffset(2024, 4, 23, 20, 0, 0, TimeSpan.Zero);
        var full = Enumerable.Range(0, 60).Max(i => Moon.LightOnGround(night.AddMinutes(10 * i), place).Lux);
        var evening = new DateTimeOffset(2024, 4, 15, 16, 0, 0, TimeSpan.Zero);
        var half = Enumerable.Range(0, 60).Max(i => Moon.LightOnGround(evening.AddMinutes(10 * i), place).Lux);
        Assert.InRange(full, 0.18, 0.32);
        Assert.InRange(half / full, 0.07, 0.13);
    }

    [Fact]
    public void A_moon_that_is_down_gives_no_light_and_one_that_is_up_gives_some() => Gen.Select(GenInstant, GenPlace).Sample((instant, place) =>
        Moon.LightOnGround(instant, place).Lux > 0 == Moon.At(instant, place).Elevation.Degrees > 0);
}
