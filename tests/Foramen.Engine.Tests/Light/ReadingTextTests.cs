using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Light;

public class ReadingTextTests
{
    [Fact]
    public void Every_form_of_the_same_light_reads_alike() => Gen.Double[-4, 18].Sample(ev =>
    {
        var value = FormattableString.Invariant($"EV {ev:0.######}");
        var luminance = ReadingText.Luminance(value, LightMeter.Usual, "x").CandelasPerSquareMetre;
        var seconds = Math.Pow(2, -ev) * 64;
        if (seconds is > 0.001 and < 3000)
        {
            var settings = FormattableString.Invariant($"f/8 {seconds:0.########} s ISO 100");
            Assert.Equal(luminance, ReadingText.Luminance(settings, LightMeter.Usual, "x").CandelasPerSquareMetre, luminance * 0.001);
        }

        if (luminance > 0.01)
        {
            var candelas = FormattableString.Invariant($"{luminance:0.######} cd/m2");
            Assert.Equal(luminance, ReadingText.Luminance(candelas, LightMeter.Usual, "x").CandelasPerSquareMetre, luminance * 0.001);
        }
    });

    [Fact]
    public void Any_text_is_a_reading_or_a_refusal() => Gen.OneOf(
        Gen.String,
        Gen.Char["EVf/0123456789. smISOcdlx-+²,"].Array[0, 30].Select(characters => new string(characters)))
        .Sample(text =>
        {
            try
            {
                return double.IsFinite(ReadingText.Luminance(text, LightMeter.Usual, "x").CandelasPerSquareMetre);
            }
            catch (RefusalException refusal)
            {
                return refusal.Message.EndsWith('.');
            }
        });
}
