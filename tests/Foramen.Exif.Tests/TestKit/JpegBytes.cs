namespace Foramen.Exif.Tests.TestKit;

/// <summary>Puts segments into JPEG files (ITU-T T.81, annex B).</summary>
public static class JpegBytes
{
    /// <summary>A marker segment: FF, the marker, the length with itself, the body.</summary>
    public static byte[] Segment(byte marker, ReadOnlySpan<byte> body)
        => [0xFF, marker, (byte)((body.Length + 2) >> 8), (byte)((body.Length + 2) & 255), .. body];

    /// <summary>An ICC profile as APP2 segment, one of one (ICC.1:2010, annex B.4).</summary>
    public static byte[] ProfileSegment(ReadOnlySpan<byte> profile) => Segment(0xE2, [.. "ICC_PROFILE\0"u8, 1, 1, .. profile]);

    /// <summary>A JPEG with segments put right behind its start marker.</summary>
    public static byte[] With(byte[] jpeg, params byte[][] segments) => [.. jpeg.AsSpan(0, 2), .. segments.SelectMany(segment => segment), .. jpeg.AsSpan(2)];

    /// <summary>Segments between start and end marker: a file with everything but a picture.</summary>
    public static byte[] Only(params byte[][] segments) => With([0xFF, 0xD8, 0xFF, 0xD9], segments);
}
