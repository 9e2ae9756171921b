using System.Runtime.InteropServices;
using BitMiracle.LibTiff.Classic;
using Foramen.Engine.Quantities;
using Foramen.Exif;
using SkiaSharp;

namespace Foramen.Imaging;

/// <summary>Writes predicted prints: 8-bit grey PNG in sRGB codes for looking at, 16-bit grey TIFF linear in reflectance for measuring.</summary>
public static class PrintWriter
{
    /// <summary>Writes an 8-bit grey PNG.</summary>
    /// <param name="path">The file.</param>
    /// <param name="codes">sRGB codes in rows from the top.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    public static void WritePng(string path, byte[] codes, int width, int height)
        => WholeFile.Write(path, stream => EncodePng(stream, codes, width, height));

    /// <summary>Writes an 8-bit grey PNG that says how the print was made.</summary>
    /// <param name="path">The file.</param>
    /// <param name="codes">sRGB codes in rows from the top.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="facts">What it says, as Exif and XMP.</param>
    public static void WritePng(string path, byte[] codes, int width, int height, PictureFacts facts)
    {
        using var encoded = new MemoryStream();
        EncodePng(encoded, codes, width, height);
        var whole = PictureFactsWriter.Write(encoded.ToArray(), facts);
        WholeFile.Write(path, stream => stream.Write(whole));
    }

    /// <summary>Writes a 16-bit grey TIFF, linear: 65535 is a reflectance of one.</summary>
    /// <param name="path">The file.</param>
    /// <param name="linear">Reflectance times 65535 in rows from the top.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    public static void WriteTiff(string path, ushort[] linear, int width, int height)
        => WholeFile.Write(path, stream => EncodeTiff(stream, linear, width, height));

    /// <summary>Encodes an 8-bit grey PNG; compressed lightly, because a print is looked at once and drawn often.</summary>
    /// <exception cref="RefusalException">Not width × height codes.</exception>
    public static void EncodePng(Stream stream, byte[] codes, int width, int height)
    {
        CheckSize(codes.Length, width, height);
        var pinned = GCHandle.Alloc(codes, GCHandleType.Pinned);
        try
        {
            using var pixmap = new SKPixmap(new SKImageInfo(width, height, SKColorType.Gray8, SKAlphaType.Opaque), pinned.AddrOfPinnedObject(), width);
            using var data = pixmap.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.Sub, 1))
                ?? throw new RefusalException("The print cannot be encoded as PNG; try another size.");
            data.SaveTo(stream);
        }
        finally
        {
            pinned.Free();
        }
    }

    private static void CheckSize(int length, int width, int height)
    {
        Guard.Within(width, 1, ushort.MaxValue, "the print's width", "pixels");
        Guard.Within(height, 1, ushort.MaxValue, "the print's height", "pixels");
        if (length != (long)width * height)
        {
            throw new RefusalException($"The print holds {length} values; {width} × {height} pixels need {(long)width * height}.");
        }
    }

    private static void EncodeTiff(Stream stream, ushort[] linear, int width, int height)
    {
        CheckSize(linear.Length, width, height);
        // The library closes the stream it writes to, so it gets one of its own.
        using var encoded = new MemoryStream();
        using (var tiff = Open(encoded))
        {
            WriteRows(tiff, linear, width, height);
        }

        stream.Write(encoded.ToArray());
    }

    private static Tiff Open(MemoryStream stream)
        => Tiff.ClientOpen("print", "w", stream, new TiffStream())
            ?? throw new RefusalException("The print cannot be encoded as TIFF; try another size.");

    private static void WriteRows(Tiff tiff, ushort[] linear, int width, int height)
    {
        tiff.SetField(TiffTag.IMAGEWIDTH, width);
        tiff.SetField(TiffTag.IMAGELENGTH, height);
        tiff.SetField(TiffTag.BITSPERSAMPLE, 16);
        tiff.SetField(TiffTag.SAMPLESPERPIXEL, 1);
        tiff.SetField(TiffTag.PHOTOMETRIC, Photometric.MINISBLACK);
        tiff.SetField(TiffTag.COMPRESSION, Compression.ADOBE_DEFLATE);
        tiff.SetField(TiffTag.ROWSPERSTRIP, 64);
        tiff.SetField(TiffTag.IMAGEDESCRIPTION, "Predicted print, linear in reflectance: 65535 is a perfect diffuser.");
        var row = new byte[width * 2];
        for (var y = 0; y < height; y++)
        {
            Buffer.BlockCopy(linear, y * width * 2, row, 0, row.Length);
            if (!tiff.WriteScanline(row, y))
            {
                throw new RefusalException("The print cannot be written as TIFF; the disk may be full.");
            }
        }
    }
}
