using Foramen.Exif.Tests.TestKit;
using Foramen.Imaging.Tests.TestKit;
using SkiaSharp;

namespace Foramen.Imaging.Tests.PublishedValues;

/// <summary>
/// Exif 2.3 (CIPA DC-008-2012), tag 0x0112: where the 0th row and the 0th column of the stored picture are to be seen. The stored picture here is two wide and three
/// high, AB / CD / EF.
/// </summary>
[Source("exif-2.3", "tag 0x0112")]
public sealed class OrientationTests
{
    [Theory]
    [InlineData(1, "AB CD EF")] // 0th row at the top, 0th column on the left
    [InlineData(2, "BA DC FE")] // top, right
    [InlineData(3, "FE DC BA")] // bottom, right
    [InlineData(4, "EF CD AB")] // bottom, left
    [InlineData(5, "ACE BDF")] // left, top
    [InlineData(6, "ECA FDB")] // right, top
    [InlineData(7, "FDB ECA")] // right, bottom
    [InlineData(8, "BDF ACE")] // left, bottom
    public void Rows_as_they_are_to_be_seen(ushort code, string rows)
    {
        var png = SamplePictures.Encode(2, 3, SKEncodedImageFormat.Png, (x, y) => new SKColor((byte)(40 * ((2 * y) + x)), 90, 200));
        var exif = new ExifWriter().Primary(ExifTag.Orientation, ExifValue.Word(code)).Tiff();
        var photo = PhotographReader.Read(PngBytes.With(png, "eXIf", exif), "turned.png");

        var seen = Enumerable.Range(0, photo.Height).Select(row => string.Concat(Enumerable.Range(0, photo.Width)
            .Select(column => (char)('A' + (photo.Rgba.Span[4 * ((row * photo.Width) + column)] / 40)))));
        Assert.Equal(rows, string.Join(' ', seen));
    }
}
