using System.Globalization;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using MetadataExtractor.Formats.Icc;

namespace Foramen.Exif;

/// <summary>
/// Reads from an image file what it says of how it was taken (Exif 2.3, CIPA DC-008; APEX relations of its annex C where only those are given).
/// Facts that are missing stay null; absurd ones are set aside with a sentence. Works in the browser; never decodes pixels.
/// </summary>
public static class PhotographFactsReader
{
    private const int ModifiedSensitivityEscape = 65535;
    private const int SensitivityTag = ExifDirectoryBase.TagIsoEquivalent;
    private const int StandardOutputSensitivityTag = 0x8831;
    private const int RecommendedExposureIndexTag = 0x8832;
    private const int IsoSpeedTag = 0x8833;

    /// <summary>The facts in an image file.</summary>
    /// <param name="image">The whole file, or at least its head; JPEG, PNG, WebP, TIFF or HEIF.</param>
    /// <exception cref="RefusalException">The bytes are not an image file that can be read.</exception>
    public static PhotographFacts Read(ReadOnlyMemory<byte> image)
    {
        IReadOnlyList<MetadataExtractor.Directory> directories;
        try
        {
            using var stream = new MemoryStream(image.ToArray(), writable: false);
            directories = ImageMetadataReader.ReadMetadata(stream);
        }
        catch (Exception failure) when (failure is ImageProcessingException or IOException or MetadataException or FormatException
            or ArgumentException or OverflowException or IndexOutOfRangeException or InvalidOperationException or NotSupportedException)
        {
            // The library throws many kinds on damaged files; all mean that this file says nothing that can be trusted.
            return new PhotographFacts { Doubts = ["What the file says of how it was taken cannot be read; it may be damaged."] };
        }

        var doubts = new List<string>();
        var (time, aperture, speed) = (ReadTime(directories, doubts), ReadAperture(directories, doubts), ReadSpeed(directories, doubts));
        return new PhotographFacts
        {
            ExposureTime = time,
            FNumber = aperture,
            Speed = speed,
            BrightnessValue = Rational(directories, ExifDirectoryBase.TagBrightnessValue) is { } brightness and >= -20 and <= 30 ? brightness : null,
            FocalLength35mm = ReadFocalLength(directories, doubts),
            Colour = ReadColour(directories, doubts),
            Orientation = Integer(directories, ExifDirectoryBase.TagOrientation) is { } orientation and >= 1 and <= 8 ? orientation : 1,
            TakenLocal = ReadTaken(directories),
            Doubts = doubts,
        };
    }

    private static Duration? ReadTime(IReadOnlyList<MetadataExtractor.Directory> directories, List<string> doubts)
    {
        var seconds = Rational(directories, ExifDirectoryBase.TagExposureTime)
            ?? (Rational(directories, ExifDirectoryBase.TagShutterSpeed) is { } tv ? Math.Pow(2, -tv) : null);
        return Checked(seconds, 1e-6, 3600, doubts, "exposure time", "s", Duration.FromSeconds);
    }

    private static FNumber? ReadAperture(IReadOnlyList<MetadataExtractor.Directory> directories, List<string> doubts)
    {
        var number = Rational(directories, ExifDirectoryBase.TagFNumber)
            ?? (Rational(directories, ExifDirectoryBase.TagAperture) is { } av ? Math.Pow(2, av / 2) : null);
        return Checked(number, 0.5, 128, doubts, "f-number", "", FNumber.FromValue);
    }

    private static CameraSpeed? ReadSpeed(IReadOnlyList<MetadataExtractor.Directory> directories, List<string> doubts)
    {
        double? iso = Integer(directories, SensitivityTag);
        if (iso is null or ModifiedSensitivityEscape)
        {
            iso = Integer(directories, StandardOutputSensitivityTag) ?? Integer(directories, RecommendedExposureIndexTag)
                ?? Integer(directories, IsoSpeedTag) ?? iso;
        }

        return Checked(iso, 1, 10_000_000, doubts, "ISO setting", "", CameraSpeed.FromIso);
    }

    private static Length? ReadFocalLength(IReadOnlyList<MetadataExtractor.Directory> directories, List<string> doubts)
        => Integer(directories, ExifDirectoryBase.Tag35MMFilmEquivFocalLength) is { } length and not 0
            ? Checked(length, 4, 3000, doubts, "focal length in terms of 36 × 24 mm", "mm", Length.FromMillimetres)
            : null;

    private static PhotographColour ReadColour(IReadOnlyList<MetadataExtractor.Directory> directories, List<string> doubts)
    {
        var profile = directories.OfType<IccDirectory>().Select(icc => icc.GetDescription(IccDirectory.TagTagDesc)).FirstOrDefault(name => name is not null);
        if (profile is null || profile.Contains("sRGB", StringComparison.OrdinalIgnoreCase))
        {
            return PhotographColour.Srgb;
        }

        if (profile.Contains("P3", StringComparison.OrdinalIgnoreCase))
        {
            return PhotographColour.DisplayP3;
        }

        doubts.Add("The file carries a colour profile that is neither sRGB nor Display P3; it is read as sRGB, so coloured tones may be off.");
        return PhotographColour.Srgb;
    }

    private static DateTime? ReadTaken(IReadOnlyList<MetadataExtractor.Directory> directories)
    {
        var text = directories.OfType<ExifSubIfdDirectory>().Select(exif => exif.GetString(ExifDirectoryBase.TagDateTimeOriginal)).FirstOrDefault(t => t is not null);
        return DateTime.TryParseExact(text, "yyyy:MM:dd HH:mm:ss", CultureInfo.InvariantCulture, DateTimeStyles.None, out var taken) ? taken : null;
    }

    private static T? Checked<T>(double? value, double min, double max, List<string> doubts, string what, string unit, Func<double, T> make)
        where T : struct
    {
        if (value is not { } number)
        {
            return null;
        }

        if (double.IsFinite(number) && number >= min && number <= max)
        {
            return make(number);
        }

        doubts.Add($"The file's {what} is {number.ToString("0.######", CultureInfo.InvariantCulture)} {unit}".TrimEnd() + ", which cannot be, so it was set aside.");
        return null;
    }

    private static double? Rational(IReadOnlyList<MetadataExtractor.Directory> directories, int tag)
    {
        foreach (var directory in directories.OfType<ExifDirectoryBase>())
        {
            if (directory.TryGetRational(tag, out var rational))
            {
                return rational.Denominator == 0 ? double.NaN : (double)rational.Numerator / rational.Denominator;
            }
        }

        return null;
    }

    private static int? Integer(IReadOnlyList<MetadataExtractor.Directory> directories, int tag)
    {
        foreach (var directory in directories.OfType<ExifDirectoryBase>().Where(d => d is not ExifThumbnailDirectory))
        {
            if (directory.TryGetInt32(tag, out var value))
            {
                return value;
            }
        }

        return null;
    }
}
