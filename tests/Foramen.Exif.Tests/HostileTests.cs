using System.Diagnostics;
using System.IO.Compression;
using System.Text;
using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Exif.Tests.TestKit;
using Foramen.Journal.Tests.TestKit;

namespace Foramen.Exif.Tests;

/// <summary>Damaged and hostile files: only facts or a refusal, in bounded time and memory.</summary>
public sealed class HostileTests
{
    private static readonly byte[] Sample = JpegBytes.Only(
        new ExifWriter()
            .Primary(ExifTag.Orientation, ExifValue.Word(8))
            .Exif(ExifTag.ExposureTime, ExifValue.Rational(1, 1600))
            .Exif(ExifTag.FNumber, ExifValue.Rational(22, 10))
            .Exif(ExifTag.PhotographicSensitivity, ExifValue.Word(50))
            .Exif(ExifTag.DateTimeOriginal, ExifValue.Text("2026:05:09 14:20:00"))
            .Exif(ExifTag.ShutterSpeedValue, ExifValue.SignedRational(7, 1))
            .Exif(ExifTag.FocalLengthIn35mmFilm, ExifValue.Word(26))
            .Segment(),
        JpegBytes.ProfileSegment(ProfileBytes.Named("Display P3")));

    /// <summary>First bytes of the formats that the reader tells apart.</summary>
    private static readonly byte[][] Heads =
    [
        [], [0xFF, 0xD8], [0x89, .. "PNG\r\n"u8, 26, 10], [.. "II*\0"u8], [.. "MM\0*"u8], [.. "RIFF"u8, 9, 9, 0, 0, .. "WEBP"u8], [0, 0, 0, 24, .. "ftypheic"u8],
    ];

    [Fact]
    public void Every_prefix_is_read_or_refused()
    {
        for (var length = 0; length <= Sample.Length; length++)
        {
            ReadOrRefused(Sample.AsMemory(0, length));
        }
    }

    [Fact]
    public void Every_single_byte_changed_is_read_or_refused()
    {
        foreach (var value in (ReadOnlySpan<byte>)[0, 1, 0x7F, 0x80, 0xFF])
        {
            for (var at = 0; at < Sample.Length; at++)
            {
                var damaged = Sample.ToArray();
                damaged[at] = damaged[at] == value ? (byte)~value : value;
                ReadOrRefused(damaged);
            }
        }
    }

    [Fact]
    public void Any_bytes_changed_are_read_or_refused()
        => Gen.Select(Gen.Int[0, Sample.Length - 1], Gen.Byte).Array[1, 12].Sample(
            changes =>
            {
                var damaged = Sample.ToArray();
                foreach (var (at, value) in changes)
                {
                    damaged[at] = value;
                }

                ReadOrRefused(damaged);
            },
            iter: 2000);

    [Fact]
    public void Any_bytes_at_all_are_read_or_refused()
        => Gen.Select(Gen.Int[0, Heads.Length - 1], Gen.Byte.Array[0, 200])
            .Sample((head, tail) => ReadOrRefused((byte[])[.. Heads[head], .. tail]), iter: 2000);

    [Fact]
    public void Directories_that_point_in_circles_end()
    {
        var tiff = new ExifWriter().Exif(ExifTag.FNumber, ExifValue.Rational(4, 1)).Tiff();
        var circle = new ExifWriter().Exif(ExifTag.ExifDirectory, ExifValue.DoubleWord(8)).Tiff();
        var next = tiff.ToArray();
        // The link to the next directory stands behind the one entry of IFD0 and points back at it.
        next[8 + 2 + 12] = 8;
        ReadOrRefused(JpegBytes.Only(JpegBytes.Segment(0xE1, [.. "Exif\0\0"u8, .. circle])));
        ReadOrRefused(JpegBytes.Only(JpegBytes.Segment(0xE1, [.. "Exif\0\0"u8, .. next])));
    }

    [Theory]
    [InlineData(3_000)]
    [InlineData(1_000_000)]
    public void Directories_nested_without_end_do_not_bring_the_program_down(int depth)
    {
        // Each directory holds one entry that points to the next, 18 bytes on.
        using var stream = new MemoryStream();
        stream.Write([.. "II*\0"u8, 8, 0, 0, 0]);
        for (var level = 1; level <= depth; level++)
        {
            stream.Write([1, 0, 0x69, 0x87, 4, 0, 1, 0, 0, 0, .. BitConverter.GetBytes(8 + (18 * level)), 0, 0, 0, 0]);
        }

        ReadOrRefused(stream.ToArray());
        if (stream.Length < 60_000)
        {
            ReadOrRefused(JpegBytes.Only(JpegBytes.Segment(0xE1, [.. "Exif\0\0"u8, .. stream.ToArray()])));
        }
    }

    [Fact]
    public void A_value_that_claims_to_be_huge_takes_no_memory()
    {
        foreach (var type in (ReadOnlySpan<ushort>)[1, 2, 3, 4, 5, 7, 10, 12])
        {
            var tiff = new ExifWriter().Exif(ExifTag.FNumber, new ExifValue(type, 0x1FFF_FFFF, _ => [0, 0, 0, 0])).Tiff();
            var before = GC.GetAllocatedBytesForCurrentThread();
            ReadOrRefused(JpegBytes.Only(JpegBytes.Segment(0xE1, [.. "Exif\0\0"u8, .. tiff])));
            Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 2_000_000);
        }
    }

    [Theory]
    [InlineData("iCCP", "p")]
    [InlineData("zTXt", "Comment")]
    public void A_chunk_that_inflates_without_end_takes_no_memory(string type, string name)
    {
        using var packed = new MemoryStream();
        using (var deflate = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            var zeros = new byte[1 << 20];
            for (var megabyte = 0; megabyte < 100; megabyte++)
            {
                deflate.Write(zeros);
            }
        }

        byte[] body = [.. Encoding.ASCII.GetBytes(name), 0, 0, .. packed.ToArray()];
        var png = PngBytes.Of(64, 64, (type, body));
        var before = GC.GetAllocatedBytesForCurrentThread();
        ReadOrRefused(png);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 8_000_000);
    }

    private static void ReadOrRefused(ReadOnlyMemory<byte> file)
    {
        var clock = Stopwatch.StartNew();
        try
        {
            var facts = PhotographFactsReader.Read(file);
            Assert.InRange(facts.Orientation, 1, 8);
            Assert.All(facts.Doubts, doubt => Assert.EndsWith(".", doubt, StringComparison.Ordinal));
        }
        catch (RefusalException refusal)
        {
            Assert.EndsWith(".", refusal.Message, StringComparison.Ordinal);
        }

        // Generous: the machine may be busy, and the first call compiles.
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(20), $"{file.Length} bytes took {clock.Elapsed}.");
    }

    [Fact]
    public void Damaged_files_of_every_kind_end_in_facts_or_a_refusal_within_bounds()
        => Mutations.Survives([Sample, .. Heads.Select(head => (byte[])[.. head, .. Sample])], file => PhotographFactsReader.Read(file), 32_000_000, 3_000);
}
