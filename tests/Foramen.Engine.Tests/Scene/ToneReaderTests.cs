using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene;

public class ToneReaderTests
{
    private static readonly PaperSight Paper = PaperSight.Of(PaperSensitivity.BlueSensitive, LightColour.Noon.ToSpectrum());

    [Fact]
    public void A_tone_is_as_bright_as_its_place() => Gen.Select(Gen.Byte[3, 253], Gen.Byte[3, 253], Gen.Byte[3, 253]).Sample((red, green, blue) =>
    {
        var photo = Photographs.Even(red, green, blue, width: 30, height: 20).Anchored();
        var tone = Read(photo, PointInPhotograph.FromFractions(0.3, 0.9));
        Assert.Equal(LuminanceMap.AsPaperSees(photo, PaperSight.Eye).Values[0], tone.Luminance.CandelasPerSquareMetre, 0.001);
        Assert.Equal(LuminanceMap.AsPaperSees(photo, Paper).Values[0], tone.ActinicLuminance.CandelasPerSquareMetre, 0.001);
        Assert.Equal(LuminanceLimit.Exact, tone.ReadingLimit);
    });

    [Fact]
    public void A_neutral_tone_has_an_actinic_ratio_of_one() => Gen.Byte[3, 253].Sample(code =>
        Assert.Equal(1, Read(Photographs.Even(code, code, code).Anchored(), PointInPhotograph.FromFractions(0, 0)).ActinicRatio, 1e-5));

    [Fact]
    public void A_point_is_read_where_it_lies()
    {
        // Left half dark, right half bright; top third of each darker still.
        var photo = Photographs.FromPixels(200, 300, (x, y) => Grey((byte)((x < 100 ? 40 : 200) - (y < 100 ? 30 : 0)))).Anchored();
        foreach (var (x, y, code) in new[] { (0.1, 0.1, 10), (0.9, 0.1, 170), (0.1, 0.9, 40), (0.9, 0.9, 200), (0, 0, 10), (1, 1, 200) })
        {
            var tone = Read(photo, PointInPhotograph.FromFractions(x, y));
            Assert.Equal(1000 * SrgbTransfer.ToLinear(code / 255.0), tone.Luminance.CandelasPerSquareMetre, 0.01);
            Assert.Equal(PhotographPosition.FromFractions(x, y), tone.Position);
        }
    }

    [Fact]
    public void A_glint_does_not_speak_for_the_surface_of_a_point_but_does_in_a_rectangle()
    {
        var photo = Photographs.FromPixels(400, 400, (x, y) => Grey(x == 200 && y == 200 ? (byte)255 : (byte)100)).Anchored();
        var point = Read(photo, PointInPhotograph.FromFractions(0.5, 0.5));
        Assert.Equal(LuminanceLimit.Exact, point.ReadingLimit);
        Assert.Equal(1000 * SrgbTransfer.ToLinear(100 / 255.0), point.Luminance.CandelasPerSquareMetre, 0.01);
        Assert.Equal(LuminanceLimit.AtLeast, Read(photo, RectangleInPhotograph.FromFractions(0.45, 0.45, 0.1, 0.1)).ReadingLimit);
    }

    [Theory]
    [InlineData(255, 255, 255, LuminanceLimit.AtLeast)]
    [InlineData(0, 0, 0, LuminanceLimit.AtMost)]
    [InlineData(200, 90, 1, LuminanceLimit.AtMost)]
    [InlineData(255, 90, 80, LuminanceLimit.Exact)]
    public void The_limit_is_that_of_what_the_paper_sees(byte red, byte green, byte blue, LuminanceLimit limit)
        => Assert.Equal(limit, Read(Photographs.Even(red, green, blue).Anchored(), PointInPhotograph.FromFractions(0.5, 0.5)).ReadingLimit);

    // By hand: half of it 0.5 of white, half 0.1, so 0.3 on the whole.
    [Fact]
    public void A_rectangle_is_read_as_a_meter_would()
    {
        var (bright, dark) = (SrgbTransfer.CodeOf(0.5), SrgbTransfer.CodeOf(0.1));
        var photo = Photographs.FromPixels(100, 100, (x, _) => Grey(x < 50 ? bright : dark)).Anchored();
        Assert.Equal(300, Read(photo, RectangleInPhotograph.FromFractions(0.2, 0.2, 0.6, 0.6)).Luminance.CandelasPerSquareMetre, 2.0);
    }

    [Fact]
    public void Any_rectangle_inside_the_photograph_can_be_read() => Gen.Select(Photographs.Any, Gen.Double[0, 0.999], Gen.Double[0, 0.999], Gen.Double[0, 1], Gen.Double[0, 1])
        .Sample((photo, left, top, width, height) =>
        {
            var area = RectangleInPhotograph.FromFractions(left, top, Math.Max(1e-5, width * (1 - left)), Math.Max(1e-5, height * (1 - top)));
            Assert.InRange(Read(photo, area).Luminance.CandelasPerSquareMetre, 0, 1001);
        });

    [Theory]
    [InlineData(-0.01, 0.5, 0.1, 0.1)]
    [InlineData(0.95, 0.5, 0.1, 0.1)]
    [InlineData(0.5, 0.5, 0.1, 0.6)]
    [InlineData(0.5, 0.5, 0, 0.1)]
    [InlineData(0.5, double.NaN, 0.1, 0.1)]
    public void Places_outside_the_photograph_are_refused(double left, double top, double width, double height)
        => Assert.Throws<RefusalException>(() => RectangleInPhotograph.FromFractions(left, top, width, height));

    [Theory]
    [InlineData(1.01, 0.5)]
    [InlineData(0.5, -0.5)]
    [InlineData(double.PositiveInfinity, 0.5)]
    public void Points_outside_the_photograph_are_refused(double x, double y)
        => Assert.Throws<RefusalException>(() => PointInPhotograph.FromFractions(x, y));

    [Fact]
    public void Photographs_that_hold_no_luminance_are_refused_with_the_tones_name()
    {
        var point = PointInPhotograph.FromFractions(0.5, 0.5);
        Assert.Contains("wall", Assert.Throws<RefusalException>(() => Read(Photographs.Even(9, 9, 9), point)).Message, StringComparison.Ordinal);
        Assert.Contains(
            "no photograph",
            Assert.Throws<RefusalException>(() => ToneReader.Read("wall", Rendering.Mid, point, null, Paper)).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_hand_reading_is_taken_as_it_is()
    {
        var reading = new HandReading(Luminance.FromCandelasPerSquareMetre(512)) { ActinicRatio = 0.5 };
        var tone = ToneReader.Read("pump house", Rendering.OpenShadow, reading, null, Paper);
        Assert.Equal(512, tone.Luminance.CandelasPerSquareMetre);
        Assert.Equal(256, tone.ActinicLuminance.CandelasPerSquareMetre);
        Assert.Equal(HandReading.UsualSpread, tone.MeterSpread);
        Assert.Null(tone.Position);
        Assert.Throws<RefusalException>(() => ToneReader.Read("dark", Rendering.Mid, new HandReading(default), null, Paper));
        Assert.Throws<RefusalException>(() => reading with { ActinicRatio = 0 });
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void A_tone_without_a_name_is_refused(string name)
        => Assert.Throws<RefusalException>(() => ToneReader.Read(name, Rendering.Mid, new HandReading(Luminance.FromCandelasPerSquareMetre(1)), null, Paper));

    private static Tone Read(ScenePhotograph photo, PhotographArea area) => ToneReader.FromPhotograph("wall", Rendering.Mid, area, photo, Paper);

    private static (byte Red, byte Green, byte Blue) Grey(byte code) => (code, code, code);
}
