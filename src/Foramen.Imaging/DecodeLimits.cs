using Foramen.Engine.Quantities;
using SkiaSharp;

namespace Foramen.Imaging;

/// <summary>How much a file may ask for before it is refused unread.</summary>
/// <param name="MostMegapixels">Most pixels, millions, as the header declares them; at most 500.</param>
/// <param name="MostBytes">Largest file, bytes; at most 2 000 000 000.</param>
public sealed record DecodeLimits(double MostMegapixels, long MostBytes)
{
    /// <summary>Most scans of a JPEG: every one costs as much as the whole picture, and cameras and programs make a dozen at most.</summary>
    internal const int MostScans = 100;

    /// <summary>120 megapixels and 200 MB: more than any phone makes, less than would hurt.</summary>
    public static DecodeLimits Usual { get; } = new(120, 200_000_000);

    /// <summary>Most pixels, millions, as the header declares them; four bytes each must fit one array.</summary>
    public double MostMegapixels { get; } = Guard.Within(MostMegapixels, 0, 500, "the largest photograph", "megapixels");

    /// <summary>Largest file, bytes; it must fit one array.</summary>
    public long MostBytes { get; } = (long)Guard.Within(MostBytes, 0, 2e9, "the largest file", "bytes");

    /// <summary>Refuses what a header declares beyond the limits, before anything is decoded.</summary>
    internal void Check(SKCodec codec, ReadOnlySpan<byte> file, string name)
    {
        var (width, height) = (codec.Info.Width, codec.Info.Height);
        var megapixels = width * (double)height / 1e6;
        if (megapixels > MostMegapixels)
        {
            throw new RefusalException(FormattableString.Invariant($"{name} has {megapixels:0.#} megapixels; photographs up to {MostMegapixels:0.#} are read."));
        }

        if (Math.Max(width, height) > ushort.MaxValue)
        {
            throw new RefusalException($"{name} has {width} × {height} pixels; photographs up to {ushort.MaxValue} each way are read.");
        }

        // Inside a scan no FF is followed by anything but 00 or a restart (ITU-T T.81, B.1.1.5), so these two bytes are the start of one.
        if (codec.EncodedFormat == SKEncodedImageFormat.Jpeg && file.Count((ReadOnlySpan<byte>)[0xFF, 0xDA]) > MostScans)
        {
            throw new RefusalException($"{name} is a JPEG of more than {MostScans} scans, which no camera makes; save it again as a plain one.");
        }
    }
}
