using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Strips;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Strips;

public class StripReadingTests
{
    private static readonly Ulid Box = Id(71);

    private static readonly StripMade Made = new()
    {
        Strip = Id(81), Paper = Box, Purpose = StripPurpose.Curve, OnStripLux = 2, LightKelvin = 3000, Seconds = [0.2, 1, 2],
    };

    private static readonly StripRead Read = new() { Strip = Id(81), By = StripReader.Densitometer };

    [Fact]
    public void A_strip_that_was_only_made_has_its_light_and_times()
    {
        var strip = Made.ToStrip(null);
        Assert.Equal((2.0, 3000.0, 0.25), (strip.OnSheet.Lux, strip.Light.Temperature.Kelvin, strip.LightSpread.Value));
        Assert.Equal([0.2, 1, 2], strip.Times.Select(time => time.Seconds));
        Assert.Empty(strip.Patches);
        Assert.Empty(strip.Eye);
        Assert.Equal(0.5, (Made with { LightSdStops = 0.5 }).ToStrip(null).LightSpread.Value);
    }

    // A card moved by hand is 0.15 s unsure at either edge: 0.15·√2 = 0.2121 s, but no patch is less sure than its time is long.
    [Fact]
    public void Densities_are_patches_the_masked_first_and_the_fogged_last_and_what_was_not_read_is_none()
    {
        var patches = Made.ToStrip(Read with { Densities = [0.1, null, 0.9], MaskedDensity = 0.05, FoggedDensity = 2 }).Patches;
        Assert.Equal([0.05, 0.1, 0.9, 2], patches.Select(patch => patch.Density.Value));
        Assert.Equal([0, 0.2, 2, 0], patches.Select(patch => patch.Time.Seconds));
        Assert.Equal([false, false, false, true], patches.Select(patch => patch.Fogged));
        Assert.Equal([0, 0.2, 0.2121, 0], patches.Select(patch => Math.Round(patch.TimingSpread.Seconds, 4)));
    }

    // Each opening of the hole adds two edges: the third patch has had six, 0.15·√6 = 0.3674 s; the second four, 0.3 s.
    [Fact]
    public void Openings_of_the_hole_add_up()
    {
        var patches = (Made with { InSeveralOpenings = true }).ToStrip(Read with { Densities = [0.1, 0.5, 0.9] }).Patches;
        Assert.Equal([0.2, 0.3, 0.3674], patches.Select(patch => Math.Round(patch.TimingSpread.Seconds, 4)));
    }

    // As the Engine's Paper has it: 0.02 by densitometer, 0.06 by eye, √(0.02² + (0.03·D)²) by scan, which at 1.6 is √(0.0004 + 0.002304) = 0.052.
    [Theory]
    [InlineData(StripReader.Densitometer, null, 0.02)]
    [InlineData(StripReader.Eye, null, 0.06)]
    [InlineData(StripReader.Scan, null, 0.052)]
    [InlineData(StripReader.Scan, 0.01, 0.01)]
    public void A_density_is_known_as_well_as_said_or_as_its_reader_reads(StripReader by, double? said, double spread)
    {
        var patches = Made.ToStrip(Read with { By = by, DensitySd = said, Densities = [1.6, null, null], MaskedDensity = 1.6, FoggedDensity = 1.6 }).Patches;
        Assert.Equal(3, patches.Count);
        Assert.All(patches, patch => Assert.Equal(spread, patch.DensitySpread, 1e-6));
    }

    [Fact]
    public void What_an_eye_saw_is_read_and_what_it_did_not_is_not()
    {
        var eye = Made.ToStrip(Read with { By = StripReader.Eye, FirstTone = 1, LastTone = 3, Match = new StripMatch { Step = 2, Density = 0.7 } }).Eye;
        Assert.Equal(
            [new EyeReading(EyeReadingKind.FirstTone, 1), new EyeReading(EyeReadingKind.LastTone, 3), new EyeReading(EyeReadingKind.Match, 2, Density.FromValue(0.7))],
            eye);
        Assert.Empty(Made.ToStrip(Read).Eye);
        Assert.Empty(Made.ToStrip(Read).Patches);
    }

    // Lights are known from 1500 to 25 000 K; the journal takes more.
    [Theory]
    [InlineData(1000, 1500)]
    [InlineData(5000, 5000)]
    [InlineData(100_000, 25_000)]
    public void A_light_beyond_all_lights_is_the_last_of_them(double said, double kelvin)
        => Assert.Equal(kelvin, StripReading.LightOf(Made with { LightKelvin = said }).Temperature.Kelvin);

    [Fact]
    public void What_cannot_have_been_made_or_read_is_refused()
    {
        Assert.Contains("no more light", Assert.Throws<RefusalException>(() => (Made with { Seconds = [1, 1] }).ToStrip(null)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusalException>(() => Made.ToStrip(Read with { MaskedDensity = 5 }));
        Assert.Contains("spread of a density", Assert.Throws<RefusalException>(() => Made.ToStrip(Read with { DensitySd = 0.9 })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_read_strips_of_this_box_for_its_curve_count_oldest_first()
    {
        var ledger = Ledger.Empty.With(
        [
            By(Phone, 1, 1, Made with { Strip = Id(95) }),
            By(Phone, 2, 2, Made with { Strip = Id(94) }),
            By(Phone, 3, 3, Made with { Strip = Id(93), Paper = Id(72) }),
            By(Phone, 4, 4, Made with { Strip = Id(92), Purpose = StripPurpose.Flash }),
            By(Phone, 5, 5, Made with { Strip = Id(91) }),
            .. new[] { 94, 95, 93, 92 }.Select((strip, i) => By(Phone, 6 + i, 6 + i, Read with { Strip = Id(strip), MaskedDensity = 0.1 })),
        ]);
        Assert.Equal([Id(95), Id(94)], ledger.CurveStripsOf(Box).Select(strip => strip.Id));
    }

    // Described before, between and after: strips of the middle are weighed against what was thought when they were made.
    [Fact]
    public void A_box_before_its_strips_is_the_box_when_the_first_was_made()
    {
        PaperDefined Described(string name) => new() { Paper = Box, Definition = PaperReading.Unknown(name, "negative") };
        var ledger = Ledger.Empty.With(
        [
            By(Phone, 1, 1, Described("first")),
            By(Phone, 2, 2, Described("second")),
            By(Phone, 3, 3, Made),
            By(Phone, 4, 4, Described("third")),
            By(Phone, 5, 5, Made with { Strip = Id(82) }),
            By(Phone, 6, 6, Read with { MaskedDensity = 0.1 }),
            By(Phone, 7, 7, Read with { Strip = Id(82), MaskedDensity = 0.1 }),
        ]);
        var box = ledger.Papers.Find(Box)!;
        Assert.Equal("second", StripReading.Before(box, ledger.CurveStripsOf(Box)).Name);
        Assert.Equal("third", StripReading.Before(box, []).Name);
    }
}
