using CsCheck;
using Foramen.Exif.Tests.TestKit;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;

namespace Foramen.Exif.Tests;

/// <summary>The same files read by an independent library, MetadataExtractor, give the same values.</summary>
[Source("metadata-extractor", Basis.Library)]
public sealed class AnotherReaderTests
{
    [Fact]
    public void Both_readers_find_the_same()
        => Gen.Select(Gen.UInt[1, 4_000_000], Gen.UInt[1, 4_000_000], Gen.UInt[5, 1280], Gen.UShort[1, 65534], Gen.UShort[4, 3000], Gen.UShort[1, 8], Gen.Bool).Sample(
            (over, under, fNumber, iso, focalLength, orientation, bigEndian) =>
            {
                var file = JpegBytes.Only(new ExifWriter { BigEndian = bigEndian }
                    .Primary(ExifTag.Orientation, ExifValue.Word(orientation))
                    .Exif(ExifTag.ExposureTime, ExifValue.Rational(over, under))
                    .Exif(ExifTag.FNumber, ExifValue.Rational(fNumber, 10))
                    .Exif(ExifTag.PhotographicSensitivity, ExifValue.Word(iso))
                    .Exif(ExifTag.FocalLengthIn35mmFilm, ExifValue.Word(focalLength))
                    .Segment());
                var facts = PhotographFactsReader.Read(file);
                var directories = ImageMetadataReader.ReadMetadata(new MemoryStream(file));
                var exif = directories.OfType<ExifSubIfdDirectory>().Single();
                var seconds = exif.GetRational(ExifDirectoryBase.TagExposureTime).ToDouble();

                Assert.Equal(seconds is >= 1e-6 and <= 3600 ? seconds : null, facts.ExposureTime?.Seconds);
                Assert.Equal(exif.GetRational(ExifDirectoryBase.TagFNumber).ToDouble(), facts.FNumber!.Value.Value);
                Assert.Equal(exif.GetInt32(ExifDirectoryBase.TagIsoEquivalent), facts.Speed!.Value.Iso);
                Assert.Equal(exif.GetInt32(ExifDirectoryBase.Tag35MMFilmEquivFocalLength), facts.FocalLength35mm!.Value.Millimetres, 1e-9);
                Assert.Equal(directories.OfType<ExifIfd0Directory>().Single().GetInt32(ExifDirectoryBase.TagOrientation), facts.Orientation);
            },
            iter: 300);
}
