using System.Text.RegularExpressions;
using Foramen.Cli.Journals;
using Foramen.Cli.Kit;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Strips;

namespace Foramen.Cli.Strips;

/// <summary>Strips, boxes and lists of values as they are named at the prompt.</summary>
internal static partial class StripInput
{
    /// <summary>A strip file.</summary>
    /// <exception cref="RefusalException">No such file, or not a strip.</exception>
    public static Strip File(string path)
    {
        try
        {
            return KitFile.Read(path, StripJson.Default.StripDescription, "strip", "foramen strip read").ToStrip();
        }
        catch (RefusalException refusal) when (!refusal.Message.Contains(path, StringComparison.Ordinal))
        {
            throw new RefusalException($"{path}: {refusal.Message}", refusal);
        }
    }

    /// <summary>The strips of a box in a journal, and the box as described.</summary>
    /// <exception cref="RefusalException">No such box, or none of its strips was read.</exception>
    public static (PaperDefinition Box, IReadOnlyList<Strip> Strips) Journal(string path, string? wanted, Page page)
    {
        var ledger = JournalInput.Read(path, page);
        var boxes = ledger.Papers.All.ToList();
        var box = wanted is null && boxes is [var only] ? only : Find(boxes, wanted);
        if (box is null)
        {
            var names = boxes.Count == 0 ? "it has none" : $"it has {string.Join(", ", boxes.Take(10).Select(one => $"“{one.Current.Body.Name}”"))}";
            throw new RefusalException(wanted is null ? $"Say which box of {path} with --box; {names}." : $"There is no box “{wanted}” in {path}; {names}.");
        }

        var strips = ledger.CurveStripsOf(box.Id);
        return strips.Count == 0
            ? throw new RefusalException($"No strip of “{box.Current.Body.Name}” in {path} has been read yet; make one and read it first.")
            : (StripReading.Before(box, strips), [.. strips.Select(strip => strip.Made!.Body.ToStrip(strip.Read!.Body))]);
    }

    /// <summary>Light on a strip: said in lux, or a meter reading of an even surface seen through a camera.</summary>
    /// <exception cref="RefusalException">Neither or both, or what cannot be read.</exception>
    public static Illuminance Light(string? lux, string? meter, string? camera, string what)
    {
        if (lux is not null && meter is null && camera is null)
        {
            var match = Lux().Match(lux);
            return match.Success
                ? Illuminance.FromLux(QuantityText.Number(match.Groups[1].Value, what))
                : throw new RefusalException($"{Capital(what)} is “{lux}”; write it in lux, such as 0.08lx.");
        }

        if (lux is null && meter is not null && camera is not null)
        {
            var box = CommonOptions.CameraOf(camera);
            return box.ImageIlluminance(ReadingText.Luminance(meter, LightMeter.Usual, what), box.HoleOffset);
        }

        throw new RefusalException($"Say {what} either in lux (--lux 0.08lx) or by a meter reading of the white surface and the camera it is seen through (--meter \"EV 13\" --camera FILE).");
    }

    /// <summary>A list of times, each with its unit, between commas or spaces.</summary>
    public static IReadOnlyList<double> Times(string text)
        => [.. Split(text, "the times").Select((one, i) => QuantityText.Duration(one, $"the time of patch {i + 1}").Seconds)];

    /// <summary>A list of densities; a dash for one that was not read.</summary>
    public static IReadOnlyList<double?> Densities(string text)
        => [.. Split(text, "the densities").Select((one, i) => one is "-" ? (double?)null : QuantityText.Number(one, $"the density of patch {i + 1}"))];

    private static KitItem<PaperDefinition>? Find(List<KitItem<PaperDefinition>> boxes, string? wanted)
        => Ulid.TryParse(wanted ?? "", out var id)
            ? boxes.Find(box => box.Id == id)
            : boxes.FindLast(box => string.Equals(box.Current.Body.Name, wanted, StringComparison.OrdinalIgnoreCase));

    private static string[] Split(string text, string what)
    {
        var parts = text.Split([',', ' ', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return parts.Length is > 0 and <= 100
            ? parts
            : throw new RefusalException($"{Capital(what)} should be a list of 1 to 100 values between commas; there are {parts.Length}.");
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    [GeneratedRegex(@"^\s*([0-9.]+(?:e-?[0-9]+)?)\s*(?:lx|lux)\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Lux();
}
