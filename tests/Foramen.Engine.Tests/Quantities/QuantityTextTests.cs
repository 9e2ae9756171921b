using System.Globalization;
using CsCheck;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Quantities;

public class QuantityTextTests
{
    // Letters of real input weigh more than others, so that the fuzz gets past the first check now and then.
    private static readonly Gen<string> GenText = Gen.OneOf(
        Gen.String,
        Gen.String[Gen.Char["0123456789.,+-eE/ x×mcdkinftuµs°radgh"], 0, 14],
        Gen.Select(Gen.Double, Gen.OneOf(Gen.Const("mm"), Gen.Const("s"), Gen.Const("deg"), Gen.Const(""), Gen.Const("in")))
            .Select((value, unit) => value.ToString("R", CultureInfo.InvariantCulture) + unit));

    [Theory]
    [InlineData("0.35 mm", 0.35)]
    [InlineData("0.35mm", 0.35)]
    [InlineData(" 350 um ", 0.35)]
    [InlineData("350 µm", 0.35)]
    [InlineData("0.35in", 8.89)]
    [InlineData("1/4 in", 6.35)]
    [InlineData("1 ft", 304.8)]
    [InlineData("6.3 cm", 63)]
    [InlineData("1e-3 m", 1)]
    [InlineData("1.2 km", 1.2e6)]
    [InlineData(".5 mm", 0.5)]
    [InlineData("5. mm", 5)]
    public void Lengths(string text, double millimetres) => Assert.Equal(millimetres, QuantityText.Length(text, "the length").Millimetres, millimetres * 1e-12);

    [Theory]
    [InlineData("90 s", 90)]
    [InlineData("90 sec", 90)]
    [InlineData("2 min", 120)]
    [InlineData("1/125 s", 0.008)]
    [InlineData("8 ms", 0.008)]
    [InlineData("1.5h", 5400)]
    public void Times(string text, double seconds) => Assert.Equal(seconds, QuantityText.Duration(text, "the time").Seconds, seconds * 1e-12);

    // The international mile is 1609.344 m, the knot a nautical mile of 1852 m an hour (SI brochure, table 8; from memory).
    [Theory]
    [InlineData("2.5 m/s", 2.5)]
    [InlineData("36 km/h", 10)]
    [InlineData("100 mph", 44.704)]
    [InlineData("36 kn", 18.52)]
    public void Speeds(string text, double metresPerSecond)
        => Assert.Equal(metresPerSecond, QuantityText.MotionSpeed(text, "the speed").MetresPerSecond, metresPerSecond * 1e-12);

    [Theory]
    [InlineData("/4 in")]
    [InlineData("1/ in")]
    [InlineData("1/x in")]
    [InlineData("1/0 in")]
    public void A_broken_fraction_is_refused(string text) => Assert.Throws<RefusalException>(() => QuantityText.Length(text, "the length"));

    [Theory]
    [InlineData("12 deg", 12)]
    [InlineData("-3.5°", -3.5)]
    [InlineData("1 rad", 57.29577951308232)]
    public void Angles(string text, double degrees) => Assert.Equal(degrees, QuantityText.Angle(text, "the tilt").Degrees, 1e-12);

    [Theory]
    [InlineData("300 ml", 300)]
    [InlineData("0.5 l", 500)]
    [InlineData("3 cl", 30)]
    public void Volumes(string text, double millilitres)
        => Assert.Equal(millilitres, QuantityText.Volume(text, "the bottle").Millilitres, 1e-9);

    [Theory]
    [InlineData("20 C", 20)]
    [InlineData("20°C", 20)]
    [InlineData("-5 C", -5)]
    [InlineData("68 °F", 20)]
    [InlineData("68F ", 20)]
    public void Temperatures(string text, double celsius)
        => Assert.Equal(celsius, QuantityText.Temperature(text, "the developer").Celsius, 1e-12);

    [Theory]
    [InlineData("20", "without a unit")]
    [InlineData("20 K", "\"K\"")]
    [InlineData("200 C", "between")]
    [InlineData("warm", "20 C")]
    public void Bad_temperatures_are_refused(string text, string says)
        => Assert.Contains(says, Assert.Throws<RefusalException>(() => QuantityText.Temperature(text, "the developer")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_negative_volume_is_refused()
        => Assert.Contains("less than nothing", Assert.Throws<RefusalException>(() => QuantityText.Volume("-30 ml", "the top-up")).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("102x127 mm", 102, 127)]
    [InlineData("102 × 127 mm", 102, 127)]
    [InlineData("4x5in", 101.6, 127)]
    [InlineData("10 cm x 127 mm", 100, 127)]
    public void Sizes(string text, double width, double height)
    {
        var size = QuantityText.Size(text, "the paper");
        Assert.Equal(width, size.Width.Millimetres, 1e-9);
        Assert.Equal(height, size.Height.Millimetres, 1e-9);
    }

    [Theory]
    [InlineData("0.35", "without a unit")]
    [InlineData("0.35 furlong", "furlong")]
    [InlineData("0.35 MM", "MM")]
    [InlineData("mm", "number with its unit")]
    [InlineData("", "number with its unit")]
    [InlineData(null, "number with its unit")]
    [InlineData("0,35 mm", "number with its unit")]
    [InlineData("-0.35 mm", "less than nothing")]
    [InlineData("1/0 mm", "number with its unit")]
    [InlineData("NaN mm", "number with its unit")]
    [InlineData("1e400 mm", "number with its unit")]
    [InlineData("1e300 km", "between")]
    [InlineData("1e307 km", "too large")]
    public void Lengths_that_cannot_be_used_are_refused_with_the_reason(string? text, string reason)
        => Assert.Contains(reason, Assert.Throws<RefusalException>(() => QuantityText.Length(text!, "the hole's diameter")).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("102 mm")]
    [InlineData("102x mm")]
    [InlineData("x127 mm")]
    [InlineData("102x127")]
    [InlineData("102x127x3 mm")]
    [InlineData("")]
    [InlineData(null)]
    public void Sizes_that_cannot_be_used_are_refused(string? text) => Assert.Throws<RefusalException>(() => QuantityText.Size(text!, "the paper"));

    [Theory]
    [InlineData("2.5", 2.5)]
    [InlineData(" 1/3 ", 1 / 3.0)]
    public void Numbers(string text, double value) => Assert.Equal(value, QuantityText.Number(text, "the exposure index"));

    [Theory]
    [InlineData("2.5 mm")]
    [InlineData("∞")]
    [InlineData("NaN")]
    [InlineData("0/0")]
    public void Numbers_that_are_none_are_refused(string text) => Assert.Throws<RefusalException>(() => QuantityText.Number(text, "the exposure index"));

    [Fact]
    public void What_is_written_in_millimetres_is_read_back() => Gen.Double[0, 1e6].Sample(millimetres =>
        Assert.Equal(millimetres, QuantityText.Length(Invariant(millimetres) + " mm", "it").Millimetres, millimetres * 1e-12));

    [Fact]
    public void What_is_written_in_seconds_is_read_back() => Gen.Double[0, 1e7].Sample(seconds =>
        Assert.Equal(seconds, QuantityText.Duration(Invariant(seconds) + "s", "it").Seconds, seconds * 1e-12));

    [Fact]
    public void Whatever_is_typed_only_a_refusal_comes_back() => GenText.Sample(
        text =>
        {
            Try(() => QuantityText.Length(text, "it"));
            Try(() => QuantityText.Duration(text, "it"));
            Try(() => QuantityText.Angle(text, "it"));
            Try(() => QuantityText.Size(text, "it"));
            Try(() => QuantityText.Volume(text, "it"));
            Try(() => QuantityText.Temperature(text, "it"));
            Try(() => QuantityText.Number(text, "it"));
        },
        iter: Samples.Of(20000));

    [Fact]
    public void The_users_own_culture_does_not_change_what_is_read()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("nl-NL");
            Assert.Equal(0.35, QuantityText.Length("0.35 mm", "it").Millimetres, 1e-12);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static string Invariant(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static void Try(Action read)
    {
        try
        {
            read();
        }
        catch (RefusalException refusal)
        {
            Assert.NotEmpty(refusal.Message);
        }
    }
}
