using System.CommandLine;
using System.Text.RegularExpressions;
using Foramen.Cli.Options;
using Foramen.Cli.Tones;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Imaging;

namespace Foramen.Cli.Scenes;

/// <summary>A scene read from the command line: photograph, camera, paper, light and tones, ready to be planned.</summary>
internal sealed partial class SceneSetup
{
    // Pixels on the long side that tones are read from, whatever the size of the print asked for; a finger's width on a phone is a hundredth of it.
    private const int LongSideForTones = 1500;

    private readonly List<string> assumptions = [];

    /// <summary>The photograph at the size tones are read from.</summary>
    public required ScenePhotograph Photograph { get; init; }

    public required SheetProjection Projection { get; init; }

    public required PhotographicPaper Paper { get; init; }

    public required PaperResponse Response { get; init; }

    public required PaperSight Sight { get; init; }

    public required ExposurePlanner Planner { get; init; }

    public required FlashSetup Flash { get; init; }

    public required IReadOnlyList<Tone> Tones { get; init; }

    /// <summary>Whether each tone lies on the sheet.</summary>
    public required IReadOnlyList<bool> OnSheet { get; init; }

    public PinholeCamera Camera => Projection.Camera;

    public LightColour Light => Response.Light;

    public IReadOnlyList<string> Assumptions => assumptions;

    /// <summary>Reads the scene.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="options">Its options.</param>
    public static SceneSetup Read(ParseResult parsed, SceneOptions options)
    {
        var notes = new List<string>();
        var meter = CommonOptions.MeterOf(parsed.GetValue(options.MeterConstant));
        var camera = CommonOptions.CameraOf(parsed.GetRequiredValue(options.Camera));
        if (parsed.GetValue(options.Tilt) is { } tilt)
        {
            camera = camera.TiltedTo(QuantityText.Angle(tilt, "the camera's tilt"));
        }

        var paper = CommonOptions.PaperOf(parsed.GetRequiredValue(options.Paper));
        var light = CommonOptions.LightOf(parsed.GetValue(options.Light));
        if (parsed.GetValue(options.Light) is null)
        {
            notes.Add("The light is taken for noon sun and sky; say --light where it is another, it is worth up to two stops.");
        }

        var response = PaperResponse.Of(paper, light);
        var sight = PaperSight.Of(paper.Sensitivity, light.ToSpectrum());
        var texts = (parsed.GetValue(options.Tones) ?? []).Select(text => ToneText.Parse(text, meter)).ToList();
        var photograph = Anchored(
            PhotographReader.Read(parsed.GetRequiredValue(options.Photograph), LongSideForTones), parsed.GetValue(options.Anchor), meter, notes);
        notes.AddRange(photograph.Facts.Doubts);
        var projection = SheetProjection.Of(camera, FieldOf(photograph, parsed.GetValue(options.FocalLength)), FormatOf(parsed.GetValue(options.Format)), AimOf(parsed, options));

        IReadOnlyList<Tone> tones = texts.Count > 0
            ? [.. texts.Select(text => ToneReader.Read(text.Name, text.Rendering, text.Source, photograph, sight))]
            : ToneSuggestions.From(photograph, projection, sight);
        if (texts.Count == 0)
        {
            notes.Add("No tone was named, so three were chosen from what the sheet sees; name your own with --tone.");
        }

        var onSheet = tones.Select(tone => TonePlacement.OnSheet(tone, projection)).ToList();
        foreach (var (tone, place) in tones.Zip(onSheet))
        {
            if (place is null)
            {
                notes.Add($"The tone \"{tone.Name}\" lies beside the sheet; it counts as lying in its middle.");
            }
        }

        IReadOnlyList<PlacedTone> placed = [.. tones.Zip(onSheet, (tone, place) => place ?? TonePlacement.InTheMiddle(tone, camera))];
        var flash = FlashOf(parsed, options, tones, camera, meter, notes);
        var errors = ExposureErrors.Of(camera, paper, light);
        if (parsed.GetValue(options.LightSpread) is { } spread)
        {
            errors = errors with { Light = Stops.FromValue(Guard.Within(spread, 0, 5, "the drift of the light", "stops")) };
        }

        var setup = new SceneSetup
        {
            Photograph = photograph,
            Projection = projection,
            Paper = paper,
            Response = response,
            Sight = sight,
            Planner = new ExposurePlanner(response, placed, flash, errors),
            Flash = flash,
            Tones = tones,
            OnSheet = [.. onSheet.Select(place => place is not null)],
        };
        setup.assumptions.AddRange(notes);
        return setup;
    }

    /// <summary>The same photograph with at least so many pixels on its long side, for a picture of that size.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="options">Its options.</param>
    /// <param name="leastLongSide">Pixels the photograph's long side should keep at least, if it has them.</param>
    public ScenePhotograph PhotographWith(ParseResult parsed, SceneOptions options, int leastLongSide)
    {
        if (leastLongSide <= Math.Max(Photograph.Width, Photograph.Height))
        {
            return Photograph;
        }

        var larger = PhotographReader.Read(parsed.GetRequiredValue(options.Photograph), leastLongSide);
        return Anchored(larger, parsed.GetValue(options.Anchor), CommonOptions.MeterOf(parsed.GetValue(options.MeterConstant)), []);
    }

    private static ScenePhotograph Anchored(ScenePhotograph photograph, string? anchor, LightMeter meter, List<string> notes)
    {
        if (anchor is null)
        {
            if (!photograph.Facts.HasExposure)
            {
                throw new RefusalException("The photograph does not say how it was exposed, so its luminances are unknown; fix them with one reading, such as --anchor \"45%,60% reads EV 12.3\".");
            }

            notes.Add("Luminances come from the photograph's own exposure data; phones bend tones in ways no file states, so a hand reading with --anchor is safer.");
            return PhotographMeter.AnchorByExposure(photograph);
        }

        var tone = AnchorPattern().Match(anchor) is { Success: true } match
            ? ToneText.Parse($"anchor: mid at {match.Groups["place"].Value}", meter)
            : throw new RefusalException($"The anchor is \"{anchor}\"; write it as \"45%,60% reads EV 12.3\".");
        return PhotographMeter.Anchor(photograph, (PhotographArea)tone.Source, ReadingText.Luminance(match.Groups["reading"].Value, meter, "the anchor"));
    }

    private static PhotographField FieldOf(ScenePhotograph photograph, string? focalLength)
    {
        if (focalLength is not null)
        {
            return PhotographField.FromFocalLength35(photograph.Width, photograph.Height, QuantityText.Length(focalLength, "the photograph's focal length"));
        }

        return photograph.Facts.FocalLength35mm is not null
            ? PhotographField.Of(photograph)
            : throw new RefusalException("The photograph does not say what angle it covers; give its focal length in terms of 36 × 24 mm, such as --focal-length-35 26mm.");
    }

    private static SheetFormat? FormatOf(string? text) => text switch
    {
        null => null,
        "level" => SheetFormat.Level,
        "upright" => SheetFormat.Upright,
        _ => throw new RefusalException($"The format is \"{text}\"; it should be level or upright."),
    };

    private static SheetAim AimOf(ParseResult parsed, SceneOptions options) => SheetAim.FromAngles(
        parsed.GetValue(options.Pan) is { } pan ? QuantityText.Angle(pan, "the pan") : Angle.Zero,
        parsed.GetValue(options.PhotographTilt) is { } tilt ? QuantityText.Angle(tilt, "the photograph's tilt") : Angle.Zero);

    private static FlashSetup FlashOf(
        ParseResult parsed, SceneOptions options, IReadOnlyList<Tone> tones, PinholeCamera camera, LightMeter meter, List<string> notes)
    {
        if (parsed.GetValue(options.NoFlash))
        {
            return FlashSetup.None;
        }

        Luminance surface;
        if (parsed.GetValue(options.FlashAt) is { } reading)
        {
            surface = ReadingText.Luminance(reading, meter, "the flash's surface");
        }
        else
        {
            var mid = WhiteCard.InTheLightOf(tones);
            surface = WhiteCard.LuminanceBeside(mid);
            notes.Add(FormattableString.Invariant(
                $"The flash is planned at a white card of {surface.CandelasPerSquareMetre:0} cd/m², in the same light as \"{mid.Name}\"; meter what you point at and say --flash-at."));
        }

        return FlashSetup.AtSurface(camera.ImageIlluminance(surface, camera.HoleOffset));
    }

    [GeneratedRegex(@"^\s*(?<place>.{3,60}?)\s+reads\s+(?<reading>.{1,60})$", RegexOptions.CultureInvariant)]
    private static partial Regex AnchorPattern();
}
