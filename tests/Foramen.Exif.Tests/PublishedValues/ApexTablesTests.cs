using Foramen.Exif.Tests.TestKit;

namespace Foramen.Exif.Tests.PublishedValues;

/// <summary>
/// APEX as tabulated in annex C of Exif 2.3 (CIPA DC-008-2012): whole steps of Tv and Av with the time and f-number marked on cameras. Typed from memory.
/// The marked numbers are rounded by trade custom, by up to 7 % for times (2^4 = 16 is marked 15) and 3 % for f-numbers (2^(9/2) = 22.6 is marked 22).
/// </summary>
[Source("exif-2.3", "annex C", Basis.Memory)]
public sealed class ApexTablesTests
{
    [Theory]
    [InlineData(-5, 30)]
    [InlineData(-4, 15)]
    [InlineData(-3, 8)]
    [InlineData(-2, 4)]
    [InlineData(-1, 2)]
    [InlineData(0, 1)]
    [InlineData(1, 1 / 2.0)]
    [InlineData(2, 1 / 4.0)]
    [InlineData(3, 1 / 8.0)]
    [InlineData(4, 1 / 15.0)]
    [InlineData(5, 1 / 30.0)]
    [InlineData(6, 1 / 60.0)]
    [InlineData(7, 1 / 125.0)]
    [InlineData(8, 1 / 250.0)]
    [InlineData(9, 1 / 500.0)]
    [InlineData(10, 1 / 1000.0)]
    [InlineData(11, 1 / 2000.0)]
    public void Time_values(int timeValue, double seconds)
    {
        var facts = Shots.FactsOf(ExifTag.ShutterSpeedValue, ExifValue.SignedRational(timeValue, 1));
        Assert.InRange(facts.ExposureTime!.Value.Seconds / seconds, 1 / 1.07, 1.07);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 1.4)]
    [InlineData(2, 2)]
    [InlineData(3, 2.8)]
    [InlineData(4, 4)]
    [InlineData(5, 5.6)]
    [InlineData(6, 8)]
    [InlineData(7, 11)]
    [InlineData(8, 16)]
    [InlineData(9, 22)]
    [InlineData(10, 32)]
    public void Aperture_values(uint apertureValue, double fNumber)
    {
        var facts = Shots.FactsOf(ExifTag.ApertureValue, ExifValue.Rational(apertureValue, 1));
        Assert.InRange(facts.FNumber!.Value.Value / fNumber, 1 / 1.03, 1.03);
    }

    [Fact]
    [OwnRule]
    public void The_plain_values_come_before_those_of_APEX()
    {
        var facts = Shots.FactsOf(new ExifWriter()
            .Exif(ExifTag.ExposureTime, ExifValue.Rational(1, 100))
            .Exif(ExifTag.ShutterSpeedValue, ExifValue.SignedRational(5, 1))
            .Exif(ExifTag.FNumber, ExifValue.Rational(18, 10))
            .Exif(ExifTag.ApertureValue, ExifValue.Rational(9, 1)));

        Assert.Equal(0.01, facts.ExposureTime!.Value.Seconds, 1e-12);
        Assert.Equal(1.8, facts.FNumber!.Value.Value, 1e-12);
    }
}
