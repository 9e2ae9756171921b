using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
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

    // The printed formulas put together again from where the Moon stands: 10.76391 lx to the footcandle, magnitude by phase, nearness, 0.172 magnitudes for each air mass.
    [Fact]
    [Source("krisciunas-schaefer-1991", "equation 20", Basis.Memory)]
    public void Moonlight_goes_with_phase_nearness_air_and_height() => Gen.Select(GenInstant, GenPlace).Sample((instant, place) =>
    {
        var phase = Moon.PhaseAt(instant).PhaseAngle.Degrees;
        var above = 10.76391 * Math.Pow(10, -0.4 * (3.84 + (0.026 * phase) + (4e-9 * Math.Pow(phase, 4)))) * Math.Pow(384400e3 / Moon.Distance(instant).Metres, 2);
        Assert.Equal(above, Moon.AboveAirLux(instant), above * 1e-9);
        var up = Moon.At(instant, place).Elevation;
        if (up.Degrees > 0)
        {
            var ground = above * Math.Pow(10, -0.4 * 0.172 * AirMass.At(up)) * Math.Sin(up.Radians);
            Assert.Equal(ground, Moon.LightOnGround(instant, place).Lux, ground * 1e-9);
        }
    });

    // 34′ of refraction and the half of the Moon's disc, 1737.4 km wide (almanacs); its distance is that from the Earth's middle, which on the horizon is nearly ours.
    [Fact]
    [Source("usno-almanac", "definition of moonrise", Basis.Memory)]
    public void At_moonrise_and_moonset_the_upper_edge_is_on_the_horizon() => Gen.Select(GenInstant, GenPlace).Sample((instant, place) =>
    {
        foreach (var one in SkyDay.Of(instant, TimeSpan.FromDays(1), place).Events.Where(one => one.Kind is SkyEventKind.Moonrise or SkyEventKind.Moonset))
        {
            var half = Math.Asin(1737.4 / (Moon.Distance(one.Instant).Metres / 1000)) * 180 / Math.PI;
            Assert.Equal(-(34.0 / 60) - half, Moon.At(one.Instant, place).TrueElevation.Degrees, 0.001);
        }
    });

    // A month has one moonrise less than days, for the Moon goes round the other way once (almanacs): 28 or 29 in 30 days, and as many sets.
    [Fact]
    public void The_moon_rises_and_sets_nearly_every_day()
    {
        var events = Enumerable.Range(0, 3)
            .SelectMany(part => SkyDay.Of(new DateTimeOffset(2024, 3, 1 + (10 * part), 0, 0, 0, TimeSpan.Zero), TimeSpan.FromDays(10), Basin).Events).ToList();
        Assert.InRange(events.Count(one => one.Kind == SkyEventKind.Moonrise), 28, 29);
        Assert.InRange(events.Count(one => one.Kind == SkyEventKind.Moonset), 28, 30);
    }

    [Fact]
    public void The_moon_is_seen_through_the_air_it_is_given()
    {
        var instant = SkyDay.Of(new DateTimeOffset(2024, 3, 20, 0, 0, 0, TimeSpan.Zero), TimeSpan.FromDays(2), Basin).First(SkyEventKind.Moonrise)!.Value.AddMinutes(20);
        var (usual, thin) = (Moon.At(instant, Basin), Moon.At(instant, Basin, new Atmosphere { PressureHectopascals = 505 }));
        Assert.Equal(usual.TrueElevation, thin.TrueElevation);
        var lifted = usual.Elevation.Degrees - usual.TrueElevation.Degrees;
        Assert.Equal(lifted / 2, thin.Elevation.Degrees - thin.TrueElevation.Degrees, lifted * 0.001);
    }

    [Fact]
    public void From_full_moon_on_it_wanes()
    {
        Assert.True(new MoonPhase(1, Angle.Zero, Angle.FromDegrees(179.9)).Waxing);
        Assert.False(new MoonPhase(1, Angle.Zero, Angle.FromDegrees(180)).Waxing);
    }
}
