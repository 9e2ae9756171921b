using System.Runtime.InteropServices;
using BitMiracle.LibTiff.Classic;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Exif;
using SkiaSharp;

namespace Foramen.Imaging;

/// <summary>
/// Decodes a scan of something on the bench to grey, within bounds: PNG, JPEG, WebP and TIFF by their content. Pixels stay where the scanner put them: no turn by a
/// tag, no change of size.
/// </summary>
public static class ScanReader
{
    /// <summary>Reads a scan from a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="encoding">How its codes stand for light.</param>
    /// <param name="limits">Bounds; the usual ones where null.</param>
    /// <returns>The scan, and the resolution the file states, if any.</returns>
    /// <exception cref="RefusalException">Missing, not a picture, too large, truncated, or not to be read.</exception>
    public static (ScanImage Scan, PictureResolution? Resolution) Read(string path, ScanEncoding encoding = ScanEncoding.Srgb, DecodeLimits? limits = null)
    {
        var bounds = limits ?? DecodeLimits.Usual;
        var bytes = BoundedFile.Read(path, bounds.MostBytes);
        if (bytes.Length == 0)
        {
            throw new RefusalException($"{path} is empty; save the scan again.");
        }

        var isTiff = bytes.AsSpan().StartsWith("II*\0"u8) || bytes.AsSpan().StartsWith("MM\0*"u8);
        return (isTiff ? OfTiff(bytes, path, encoding, bounds) : OfCodec(bytes, path, encoding, bounds), PictureResolution.Read(bytes));
    }

    private static ScanImage OfCodec(byte[] bytes, string name, ScanEncoding encoding, DecodeLimits bounds)
    {
        var pinned = GCHandle.Alloc(bytes, GCHandleType.Pinned);
        try
        {
            using var data = SKData.Create(pinned.AddrOfPinnedObject(), bytes.Length);
            using var codec = SKCodec.Create(data) ?? throw new RefusalException($"{name} is not a scan that can be read; use a PNG, JPEG or TIFF file.");
            bounds.Check(codec, bytes, name);
            var (width, height) = (codec.Info.Width, codec.Info.Height);
            var grey = codec.Info.ColorType == SKColorType.Gray8;
            var info = new SKImageInfo(width, height, grey ? SKColorType.Gray8 : SKColorType.Rgba8888, grey ? SKAlphaType.Opaque : SKAlphaType.Unpremul);
            var pixels = GC.AllocateUninitializedArray<byte>(checked(width * height * (grey ? 1 : 4)));
            unsafe
            {
                fixed (byte* into = pixels)
                {
                    if (codec.GetPixels(info, (nint)into) != SKCodecResult.Success)
                    {
                        throw new RefusalException($"{name} is truncated or damaged; save the scan again.");
                    }
                }
            }

            return grey ? ScanImage.FromGrey(width, height, pixels, encoding) : ScanImage.FromRgba(width, height, pixels, encoding);
        }
        finally
        {
            pinned.Free();
        }
    }

    private static ScanImage OfTiff(byte[] bytes, string name, ScanEncoding encoding, DecodeLimits bounds)
    {
        using var stream = new MemoryStream(bytes, writable: false);
        using var tiff = Tiff.ClientOpen("scan", "r", stream, new TiffStream())
            ?? throw new RefusalException($"{name} is not a TIFF file that can be read; save it again without compression, or as PNG.");
        var (width, height) = (Field(tiff, TiffTag.IMAGEWIDTH), Field(tiff, TiffTag.IMAGELENGTH));
        var megapixels = width * (double)height / 1e6;
        if (megapixels > bounds.MostMegapixels || Math.Max(width, height) > ushort.MaxValue)
        {
            throw new RefusalException(FormattableString.Invariant($"{name} has {width} × {height} pixels; scans up to {bounds.MostMegapixels:0.#} megapixels are read."));
        }

        if (width < 1 || height < 1)
        {
            throw new RefusalException($"{name} does not say how large it is; save the scan again.");
        }

        var raster = new int[width * height];
        if (!tiff.ReadRGBAImageOriented(width, height, raster, Orientation.TOPLEFT))
        {
            throw new RefusalException($"{name} is truncated, damaged or of a kind of TIFF that is not read; save it again as PNG.");
        }

        // The library packs A, B, G, R from the high byte down, which is R, G, B, A in memory.
        return ScanImage.FromRgba(width, height, MemoryMarshal.AsBytes<int>(raster).ToArray(), encoding);
    }

    private static int Field(Tiff tiff, TiffTag tag) => tiff.GetField(tag) is { Length: > 0 } field ? field[0].ToInt() : 0;
}
