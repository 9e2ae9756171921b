using System.Runtime.InteropServices;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Exif;
using SkiaSharp;

namespace Foramen.Imaging;

/// <summary>
/// Decodes a photograph of the scene: recognised by its content, never by its name; bounded before a pixel is decoded; turned upright by
/// its Exif orientation. JPEG files are decoded at the smallest of their own scales (eighths) that still holds the size asked for.
/// </summary>
public static class PhotographReader
{
    /// <summary>Reads a photograph from a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="leastLongSide">Pixels the long side must keep at least; the whole size where null.</param>
    /// <param name="limits">Bounds; the usual ones where null.</param>
    /// <exception cref="RefusalException">Missing, not a picture, too large, truncated, or not to be read.</exception>
    public static ScenePhotograph Read(string path, int? leastLongSide = null, DecodeLimits? limits = null)
    {
        var bounds = limits ?? DecodeLimits.Usual;
        return Read(BoundedFile.Read(path, bounds.MostBytes), path, leastLongSide, bounds);
    }

    /// <summary>Reads a photograph from bytes.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="name">What to call it in a refusal.</param>
    /// <param name="leastLongSide">Pixels the long side must keep at least; the whole size where null.</param>
    /// <param name="limits">Bounds; the usual ones where null.</param>
    /// <exception cref="RefusalException">Not a picture, too large, truncated.</exception>
    public static ScenePhotograph Read(byte[] bytes, string name, int? leastLongSide = null, DecodeLimits? limits = null)
    {
        if (bytes.Length == 0)
        {
            throw new RefusalException($"{name} is empty; copy it again from where it was taken.");
        }

        var bounds = limits ?? DecodeLimits.Usual;
        var pinned = GCHandle.Alloc(bytes, GCHandleType.Pinned);
        try
        {
            // The decoder reads the file where it lies; a copy would cost its size again.
            using var data = SKData.Create(pinned.AddrOfPinnedObject(), bytes.Length);
            using var codec = SKCodec.Create(data)
                ?? throw new RefusalException($"{name} is not a photograph that can be read; use a JPEG, PNG or WebP file.");
            bounds.Check(codec, bytes, name);
            var facts = PhotographFactsReader.Read(bytes);
            var size = SizeFor(codec, leastLongSide);
            var rgba = Decode(codec, size, name);
            var (width, height, upright) = Upright.Turn(rgba, size.Width, size.Height, facts.Orientation);
            return new ScenePhotograph(width, height, upright, WithFormatDoubt(facts, codec.EncodedFormat, name));
        }
        finally
        {
            pinned.Free();
        }
    }

    private static byte[] Decode(SKCodec codec, SKSizeI size, string name)
    {
        // Without a colour space nothing is converted: the codes stay those of the file.
        var info = new SKImageInfo(size.Width, size.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul);
        var rgba = GC.AllocateUninitializedArray<byte>(info.BytesSize);
        unsafe
        {
            fixed (byte* pixels = rgba)
            {
                var result = codec.GetPixels(info, (nint)pixels);
                if (result != SKCodecResult.Success)
                {
                    throw new RefusalException(result is SKCodecResult.IncompleteInput or SKCodecResult.ErrorInInput
                        ? $"{name} is truncated or damaged; copy it again from where it was taken."
                        : $"{name} cannot be decoded; use a JPEG, PNG or WebP file.");
                }
            }
        }

        return rgba;
    }

    private static SKSizeI SizeFor(SKCodec codec, int? leastLongSide)
    {
        var full = new SKSizeI(codec.Info.Width, codec.Info.Height);
        if (leastLongSide is not { } least || codec.EncodedFormat != SKEncodedImageFormat.Jpeg)
        {
            return full;
        }

        // JPEG's own scales are eighths; a slightly larger picture costs less than resampling a smaller one up.
        for (var eighths = 1; eighths < 8; eighths++)
        {
            var scaled = codec.GetScaledDimensions(eighths / 8f);
            if (Math.Max(scaled.Width, scaled.Height) >= least)
            {
                return scaled;
            }
        }

        return full;
    }

    private static PhotographFacts WithFormatDoubt(PhotographFacts facts, SKEncodedImageFormat format, string name)
    {
        var extension = Path.GetExtension(name).TrimStart('.').ToUpperInvariant();
        var matches = extension switch
        {
            "JPG" or "JPEG" => format == SKEncodedImageFormat.Jpeg,
            "PNG" => format == SKEncodedImageFormat.Png,
            "WEBP" => format == SKEncodedImageFormat.Webp,
            _ => true,
        };
        return matches ? facts : facts with { Doubts = [.. facts.Doubts, $"{Path.GetFileName(name)} is named {extension} but holds a {format.ToString().ToUpperInvariant()} picture; it was read as that."] };
    }
}
