using Foramen.Engine.Scene;
using Foramen.Exif.Tests.TestKit;

namespace Foramen.Exif.Tests;

public sealed class AbsurdTests
{
    public static TheoryData<string, ushort, ExifValue> Absurdities => new()
    {
        { "exposure time is 0 s", ExifTag.ExposureTime, ExifValue.Rational(0, 1) },
        { "exposure time is divided by zero", ExifTag.ExposureTime, ExifValue.Rational(1, 0) },
        { "exposure time is divided by zero", ExifTag.ExposureTime, ExifValue.Rational(0, 0) },
        { "exposure time is -0.01 s", ExifTag.ExposureTime, ExifValue.SignedRational(-1, 100) },
        { "exposure time is 31557600 s", ExifTag.ExposureTime, ExifValue.Rational(31557600, 1) },
        { "exposure time is 2.33E-10 s", ExifTag.ExposureTime, ExifValue.Rational(1, uint.MaxValue) },
        { "exposure time is endless", ExifTag.ShutterSpeedValue, ExifValue.SignedRational(-5000, 1) },
        { "exposure time is 0 s", ExifTag.ShutterSpeedValue, ExifValue.SignedRational(5000, 1) },
        { "exposure time is divided by zero", ExifTag.ShutterSpeedValue, ExifValue.SignedRational(7, 0) },
        { "f-number is 0,", ExifTag.FNumber, ExifValue.Rational(0, 1) },
        { "f-number is divided by zero", ExifTag.FNumber, ExifValue.Rational(28, 0) },
        { "f-number is -2.8,", ExifTag.FNumber, ExifValue.SignedRational(-28, 10) },
        { "f-number is 4.29E+9,", ExifTag.FNumber, ExifValue.Rational(uint.MaxValue, 1) },
        { "f-number is endless", ExifTag.ApertureValue, ExifValue.Rational(uint.MaxValue, 1) },
        { "ISO setting is 0,", ExifTag.PhotographicSensitivity, ExifValue.Word(0) },
        { "ISO setting is 4.29E+9,", ExifTag.IsoSpeed, ExifValue.DoubleWord(uint.MaxValue) },
        { "mm is 1 mm", ExifTag.FocalLengthIn35mmFilm, ExifValue.Word(1) },
        { "mm is 65535 mm", ExifTag.FocalLengthIn35mmFilm, ExifValue.Word(65535) },
    };

    [Theory]
    [MemberData(nameof(Absurdities))]
    public void Absurd_values_are_set_aside_with_a_sentence(string says, ushort tag, ExifValue value)
    {
        var facts = Shots.FactsOf(tag, value);

        Assert.Equal((null, null, null, null), (facts.ExposureTime, facts.FNumber, facts.Speed, facts.FocalLength35mm));
        var doubt = Assert.Single(facts.Doubts);
        Assert.Contains(says, doubt, StringComparison.Ordinal);
        Assert.EndsWith(".", doubt, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", doubt, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(9)]
    [InlineData(65535)]
    public void An_unknown_orientation_is_upright(ushort code)
        => Assert.Equal(1, Shots.FactsOf(new ExifWriter().Primary(ExifTag.Orientation, ExifValue.Word(code))).Orientation);

    [Fact]
    public void A_focal_length_of_zero_means_unknown()
    {
        // Exif 2.3, tag 0xA405: the value 0 means that the length is unknown.
        var facts = Shots.FactsOf(ExifTag.FocalLengthIn35mmFilm, ExifValue.Word(0));
        Assert.Null(facts.FocalLength35mm);
        Assert.Empty(facts.Doubts);
    }

    [Theory]
    [InlineData("0000:00:00 00:00:00")]
    [InlineData("2026:02:30 10:00:00")]
    [InlineData("yesterday")]
    [InlineData("")]
    [InlineData("    :  :     :  :  ")]
    public void A_time_that_no_calendar_has_is_left_out(string text)
        => Assert.Null(Shots.FactsOf(ExifTag.DateTimeOriginal, ExifValue.Text(text)).TakenLocal);

    [Fact]
    public void A_brightness_that_no_scene_has_is_left_out()
    {
        // Exif 2.3, tag 0x9203: FFFFFFFF over anything means unknown.
        PhotographFacts[] facts =
        [
            Shots.FactsOf(ExifTag.BrightnessValue, ExifValue.SignedRational(-1, 0)),
            Shots.FactsOf(ExifTag.BrightnessValue, ExifValue.SignedRational(99, 1)),
            Shots.FactsOf(ExifTag.BrightnessValue, ExifValue.SignedRational(-1, 100)),
            Shots.FactsOf(ExifTag.BrightnessValue, ExifValue.SignedRational(5, 0)),
        ];

        Assert.All(facts, f => Assert.Null(f.BrightnessValue));
        Assert.Equal(-1, Shots.FactsOf(ExifTag.BrightnessValue, ExifValue.SignedRational(-100, 100)).BrightnessValue);
    }
}
