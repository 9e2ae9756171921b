using System.CommandLine;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Scans;

/// <summary>The options that say where a print is on a picture and what the picture's light means.</summary>
internal sealed class PrintScanOptions
{
    private const double UsualRadius = 12;

    public Option<string> Print { get; } = new("--print") { Description = "The scan or photograph of the print (PNG, JPEG, WebP or TIFF), on plain ground that is seen on every side.", HelpName = "FILE", Required = true };

    public Option<string?> Corners { get; } = new("--corners") { Description = "Its corners in pixels, clockwise from the upper left, where they are not to be found: \"40,60 600,30 610,270 30,240\".", HelpName = "PLACES" };

    public Option<string[]> Known { get; } = new("--known")
    {
        Description = "A patch of known density and its middle in pixels, such as \"80,100 = 0.06\"; how far around it is even may follow: \"80,100,20 = 0.06\". Two or more, light and dark, correct flare.",
        HelpName = "PATCH",
        AllowMultipleArgumentsPerToken = false,
    };

    public Option<double?> Ground { get; } = new("--ground") { Description = "Density of the ground the print lies on, such as 0.08 for white paper.", HelpName = "D" };

    public Option<bool> EvenLight { get; } = new("--even-light") { Description = "The light is even, as in a flatbed scanner; otherwise it is taken from the ground around the print." };

    public Option<string?> Rim { get; } = new("--rim") { Description = "Width of the sheet's unexposed rim, such as 4mm; 4 mm where nothing is said.", HelpName = "LENGTH" };

    public void AddTo(Command verb)
    {
        foreach (var option in new Option[] { Print, Corners, Known, Ground, EvenLight, Rim })
        {
            verb.Options.Add(option);
        }
    }

    /// <summary>The print on its picture.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="scan">The picture.</param>
    /// <exception cref="RefusalException">No print, no known density, or what cannot be read.</exception>
    public PrintSetting Read(ParseResult parsed, ScanImage scan)
    {
        var known = (parsed.GetValue(Known) ?? []).Select(Patch).ToList();
        var ground = parsed.GetValue(Ground);
        if (known.Count == 0 && ground is null)
        {
            throw new RefusalException("Nothing on the picture is of known density; name a patch, such as --known \"80,100 = 0.06\", or the ground, such as --ground 0.08.");
        }

        var corners = parsed.GetValue(Corners) is { } text && ScanPoints.Four(text) is var four
            ? new PrintCorners(four[0], four[1], four[2], four[3])
            : SheetFinder.Find(scan);
        var even = parsed.GetValue(EvenLight);
        if (even && ground is not null)
        {
            throw new RefusalException("With --even-light the ground is not looked at; name a patch on it with --known instead of --ground.");
        }

        var light = even ? null : LightField.Around(scan, corners);
        return new PrintSetting(scan, corners, PrintSetting.ScaleThrough(scan, light, known, ground is { } density ? Density.FromValue(density) : null), light);
    }

    private static KnownPatch Patch(string text)
    {
        if (text.Split('=') is [var place, var density] && place.Split(',') is { Length: 2 or 3 } parts)
        {
            return new KnownPatch(
                PixelPoint.At(QuantityText.Number(parts[0], "a known patch's place"), QuantityText.Number(parts[1], "a known patch's place")),
                parts.Length == 3 ? QuantityText.Number(parts[2], "a known patch's size") : UsualRadius,
                Density.FromValue(QuantityText.Number(density, "a known density")));
        }

        throw new RefusalException($"The known patch is “{text}”; write its middle in pixels and its density, such as \"80,100 = 0.06\".");
    }
}
