using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Camera;

public sealed class ScanImageTests
{
    // Rec. 601 (ITU-R BT.601): luma is 0.299 R + 0.587 G + 0.114 B. Weights in 256ths are off by 0.0018 at most each, so a code at most; what is grey stays.
    [Fact]
    public void Colour_becomes_luma() => Gen.Byte.Array[6 * 4 * 5].Sample(rgba =>
    {
        var scan = ScanImage.FromRgba(6, 5, rgba);
        Assert.Equal((6, 5), (scan.Width, scan.Height));
        for (var i = 0; i < 30; i++)
        {
            var luma = (0.299 * rgba[4 * i]) + (0.587 * rgba[(4 * i) + 1]) + (0.114 * rgba[(4 * i) + 2]);
            Assert.InRange(scan.Codes[i] - luma, -1.01, 1.01);
        }
    });

    [Fact]
    public void Grey_keeps_its_codes()
    {
        var rgba = Enumerable.Range(0, 256).SelectMany(code => new[] { (byte)code, (byte)code, (byte)code, (byte)(255 - code) }).ToArray();
        Assert.Equal(Enumerable.Range(0, 256).Select(code => (byte)code), ScanImage.FromRgba(16, 16, rgba).Codes.ToArray());
    }

    // IEC 61966-2-1: below 0.04045 a line of 1/12.92, above a power of 2.4.
    [Fact]
    public void Codes_stand_for_light_by_their_encoding()
    {
        var codes = Enumerable.Range(0, 256).Select(code => (byte)code).ToArray();
        var (srgb, linear) = (ScanImage.FromGrey(32, 8, codes), ScanImage.FromGrey(32, 8, codes, ScanEncoding.Linear));
        for (var code = 0; code < 256; code++)
        {
            var part = code / 255.0;
            Assert.Equal(part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4), srgb.LightAt(code % 32, code / 32), 1e-6);
            Assert.Equal(part, linear.LightAt(code % 32, code / 32), 1e-6);
            Assert.Equal(linear.LightOf((byte)code), linear.LightOfCodes[code]);
            Assert.Equal(code, linear.Row(code / 32)[code % 32]);
        }
    }

    [Fact]
    public void Too_few_or_too_many_values_are_refused()
    {
        Assert.Equal("The scan holds 11 values; 3 × 4 pixels need 12.", Assert.Throws<RefusalException>(() => ScanImage.FromGrey(3, 4, new byte[11])).Message);
        Assert.Equal("The scan holds 12 bytes; 3 × 4 pixels need 48.", Assert.Throws<RefusalException>(() => ScanImage.FromRgba(3, 4, new byte[12])).Message);
        Assert.Throws<RefusalException>(() => ScanImage.FromGrey(0, 4, Array.Empty<byte>()));
        Assert.Throws<RefusalException>(() => ScanImage.FromGrey(4, 0, Array.Empty<byte>()));
        Assert.Throws<RefusalException>(() => ScanImage.FromRgba(70_000, 1, new byte[280_000]));
    }

    // 254 dpi are ten pixels to a millimetre.
    [Fact]
    public void A_resolution_is_a_size_of_pixels()
    {
        Assert.Equal(0.1, ScanScale.FromDotsPerInch(254).MillimetresPerPixel, 1e-12);
        Assert.Equal(254, ScanScale.FromDotsPerInch(254).DotsPerInch, 1e-9);
        Assert.Equal(0.1, ScanScale.FromDotsPerInch(254, 0.1).RelativeSd);
    }

    // Two points each 2 pixels wrong: 2·√2 over 50 pixels is 0.057; over 10 pixels it would be 0.28, which is held at a fifth.
    [Fact]
    public void A_short_ruler_is_a_poor_one()
    {
        Assert.Equal(2 * Math.Sqrt(2) / 50, ScanScale.FromRuler(Length.FromMillimetres(1), 50, 2).RelativeSd, 1e-12);
        Assert.Equal(0.2, ScanScale.FromRuler(Length.FromMillimetres(0.5), 10, 2).RelativeSd, 1e-12);
    }

    [Fact]
    public void Absurd_scales_and_places_are_refused()
    {
        Assert.Throws<RefusalException>(() => ScanScale.FromDotsPerInch(40));
        Assert.Throws<RefusalException>(() => ScanScale.FromDotsPerInch(600, 0.3));
        Assert.Contains("ruler's marks is 0.05 mm", Assert.Throws<RefusalException>(() => ScanScale.FromRuler(Length.FromMillimetres(0.05), 100)).Message, StringComparison.Ordinal);
        Assert.Contains("in the picture is 9 pixels", Assert.Throws<RefusalException>(() => ScanScale.FromRuler(Length.FromMillimetres(1), 9)).Message, StringComparison.Ordinal);
        Assert.Throws<RefusalException>(() => PixelPoint.At(-1, 0));
        Assert.Throws<RefusalException>(() => PixelPoint.At(0, 65_536));
        Assert.Equal(5, PixelPoint.At(1, 2).DistanceTo(PixelPoint.At(4, 6)), 1e-12);
    }
}
