using System.Globalization;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Exif;

/// <summary>
/// Reads from an image file what it says of how it was taken (Exif 2.3, CIPA DC-008; APEX relations of its annex C where only those are given).
/// Facts that are missing stay null; absurd ones are set aside with a sentence. Works in the browser; never decodes pixels.
/// </summary>
public static class PhotographFactsReader
{
    private const long ModifiedSensitivityEscape = 65535;
    private const ushort OrientationTag = 0x0112;
    private const ushort ExposureTimeTag = 0x829A;
    private const ushort FNumberTag = 0x829D;
    private const ushort ExifDirectoryTag = 0x8769;
    private const ushort SensitivityTag = 0x8827;
    private const ushort StandardOutputSensitivityTag = 0x8831;
    private const ushort RecommendedExposureIndexTag = 0x8832;
    private const ushort IsoSpeedTag = 0x8833;
    private const ushort TakenTag = 0x9003;
    private const ushort TimeValueTag = 0x9201;
    private const ushort ApertureValueTag = 0x9202;
    private const ushort BrightnessValueTag = 0x9203;
    private const ushort FocalLength35mmTag = 0xA405;

    /// <summary>Half of full code is 0.214 of full light in sRGB (IEC 61966-2-1); from here on it would be a third of a stop more, or less.</summary>
    private static readonly (double Least, double Most) SrgbMiddle = (0.17, 0.27);

    /// <summary>The facts in an image file. Bytes that are no image, or a damaged one, say nothing; what was there and could not be read is doubted.</summary>
    /// <param name="image">The whole file, or at least its head; JPEG, PNG, WebP, TIFF or HEIF.</param>
    public static PhotographFacts Read(ReadOnlyMemory<byte> image)
    {
        var parts = FileParts.Of(image);
        var doubts = new List<string>();
        var directories = Directories(parts.Exif, doubts);
        var (time, aperture, speed) = (ReadTime(directories, doubts), ReadAperture(directories, doubts), ReadSpeed(directories, doubts));
        return new PhotographFacts
        {
            ExposureTime = time,
            FNumber = aperture,
            Speed = speed,
            BrightnessValue = ReadBrightness(directories),
            FocalLength35mm = ReadFocalLength(directories, doubts),
            Colour = ReadColour(parts.Profile, doubts),
            Orientation = !parts.KeepsTurnItself && Integer(directories, OrientationTag) is { } orientation and >= 1 and <= 8 ? (int)orientation : 1,
            TakenLocal = ReadTaken(directories),
            Doubts = doubts,
        };
    }

    /// <summary>The Exif directory and the one that points to it, in this order.</summary>
    private static List<TiffDirectory> Directories(ReadOnlyMemory<byte> tiff, List<string> doubts)
    {
        if (tiff.IsEmpty)
        {
            return [];
        }

        var first = TiffDirectory.First(tiff);
        var pointer = first?[ExifDirectoryTag]?.Integer;
        var exif = pointer is { } offset ? TiffDirectory.At(tiff, offset) : null;
        if (first is not { IsWhole: true } || (pointer is not null && exif is not { IsWhole: true }))
        {
            doubts.Add("What the file says of how it was taken cannot all be read; it may be damaged.");
        }

        return [.. new[] { exif, first }.OfType<TiffDirectory>()];
    }

    private static Duration? ReadTime(List<TiffDirectory> directories, List<string> doubts)
    {
        var seconds = Ratio(directories, ExposureTimeTag) ?? (Ratio(directories, TimeValueTag) is { } tv ? Math.Pow(2, -tv) : null);
        return Checked(seconds, 1e-6, 3600, doubts, "exposure time", "s", Duration.FromSeconds);
    }

    private static FNumber? ReadAperture(List<TiffDirectory> directories, List<string> doubts)
    {
        var number = Ratio(directories, FNumberTag) ?? (Ratio(directories, ApertureValueTag) is { } av ? Math.Pow(2, av / 2) : null);
        return Checked(number, 0.5, 128, doubts, "f-number", "", FNumber.FromValue);
    }

    private static CameraSpeed? ReadSpeed(List<TiffDirectory> directories, List<string> doubts)
    {
        var iso = Integer(directories, SensitivityTag);
        if (iso is null or ModifiedSensitivityEscape)
        {
            var longer = Integer(directories, StandardOutputSensitivityTag) ?? Integer(directories, RecommendedExposureIndexTag) ?? Integer(directories, IsoSpeedTag);
            if (iso is not null && longer is null)
            {
                doubts.Add("The file's ISO setting is 65535, which stands for any above that, so it was set aside.");
                return null;
            }

            iso = longer;
        }

        return Checked(iso, 1, 10_000_000, doubts, "ISO setting", "", CameraSpeed.FromIso);
    }

    private static double? ReadBrightness(List<TiffDirectory> directories)
    {
        // All bits set above the line stand for 'unknown'.
        var known = Value(directories, BrightnessValueTag)?.Ratio is { Over: not (-1 or uint.MaxValue) };
        return known && Ratio(directories, BrightnessValueTag) is { } brightness and >= -20 and <= 30 ? brightness : null;
    }

    private static Length? ReadFocalLength(List<TiffDirectory> directories, List<string> doubts)
        => Integer(directories, FocalLength35mmTag) is { } length and not 0
            ? Checked(length, 4, 3000, doubts, "focal length in terms of 36 × 24 mm", "mm", Length.FromMillimetres)
            : null;

    private static PhotographColour ReadColour(ReadOnlyMemory<byte> bytes, List<string> doubts)
    {
        if (bytes.IsEmpty)
        {
            return PhotographColour.Srgb;
        }

        var profile = ColourProfile.Of(bytes);
        if (profile.MiddleLight is { } middle && (middle < SrgbMiddle.Least || middle > SrgbMiddle.Most))
        {
            doubts.Add("The file's colour profile has a tone curve unlike that of sRGB; it is read as sRGB, so luminances will be off.");
        }

        if (profile.Colour is null)
        {
            doubts.Add("The file carries a colour profile that is neither sRGB nor Display P3; it is read as sRGB, so coloured tones may be off.");
        }

        return profile.Colour ?? PhotographColour.Srgb;
    }

    private static DateTime? ReadTaken(List<TiffDirectory> directories)
        => DateTime.TryParseExact(
            Value(directories, TakenTag)?.Text, "yyyy:MM:dd HH:mm:ss", CultureInfo.InvariantCulture, DateTimeStyles.None, out var taken) ? taken : null;

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

        var says = double.IsNaN(number) ? "is divided by zero"
            : double.IsInfinity(number) ? "is endless"
            : $"is {Plain(number)} {unit}".TrimEnd();
        doubts.Add($"The file's {what} {says}, which cannot be, so it was set aside.");
        return null;
    }

    private static string Plain(double number)
        => number.ToString(number == 0 || Math.Abs(number) is >= 0.0001 and < 1e8 ? "0.####" : "0.##E+0", CultureInfo.InvariantCulture);

    private static double? Ratio(List<TiffDirectory> directories, ushort tag)
        => Value(directories, tag)?.Ratio is { } ratio ? ratio.Under == 0 ? double.NaN : (double)ratio.Over / ratio.Under : null;

    private static long? Integer(List<TiffDirectory> directories, ushort tag) => Value(directories, tag)?.Integer;

    private static TiffValue? Value(List<TiffDirectory> directories, ushort tag)
        => directories.Select(directory => directory[tag]).FirstOrDefault(value => value is not null);
}
