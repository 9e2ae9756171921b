using Foramen.Exif.Tests.TestKit;

namespace Foramen.Exif.Tests;

public sealed class FactsTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void An_ordinary_photograph_says_all_that_is_asked(bool bigEndian)
    {
        var facts = PhotographFactsReader.Read(JpegBytes.Only(new ExifWriter { BigEndian = bigEndian }
            .Primary(ExifTag.Orientation, ExifValue.Word(6))
            .Exif(ExifTag.ExposureTime, ExifValue.Rational(1, 1600))
            .Exif(ExifTag.FNumber, ExifValue.Rational(22, 10))
            .Exif(ExifTag.PhotographicSensitivity, ExifValue.Word(50))
            .Exif(ExifTag.BrightnessValue, ExifValue.SignedRational(-13, 10))
            .Exif(ExifTag.DateTimeOriginal, ExifValue.Text("2026:05:09 14:20:00"))
            .Exif(ExifTag.FocalLengthIn35mmFilm, ExifValue.Word(26))
            .Segment()));

        Assert.Equal(1 / 1600.0, facts.ExposureTime!.Value.Seconds, 1e-12);
        Assert.Equal(2.2, facts.FNumber!.Value.Value, 1e-12);
        Assert.Equal(50, facts.Speed!.Value.Iso);
        Assert.Equal(-1.3, facts.BrightnessValue!.Value, 1e-12);
        Assert.Equal(26, facts.FocalLength35mm!.Value.Millimetres, 1e-9);
        Assert.Equal(6, facts.Orientation);
        Assert.Equal(new DateTime(2026, 5, 9, 14, 20, 0), facts.TakenLocal);
        Assert.True(facts.HasExposure);
        Assert.Empty(facts.Doubts);
    }

    [Fact]
    public void A_photograph_without_Exif_says_nothing_and_doubts_nothing()
    {
        var facts = PhotographFactsReader.Read(JpegBytes.Only());

        Assert.False(facts.HasExposure);
        Assert.Equal(1, facts.Orientation);
        Assert.Empty(facts.Doubts);
    }
}
