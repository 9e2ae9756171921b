using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Tones;

namespace Foramen.Field.Sheets;

/// <summary>What the journal says of a sheet's camera, paper, light and tones, as the Engine reads them; the ground of the steps Meter and Plan.</summary>
public sealed class MeteredScene
{
    /// <summary>The light where nobody has said any.</summary>
    public static LightColour UsualLight => LightColour.Noon;

    private MeteredScene(
        PinholeCamera camera, PaperResponse response, ScenePhotograph? photograph, SheetProjection? projection, IReadOnlyList<(Ulid Id, Tone Tone)> tones)
    {
        Camera = camera;
        Response = response;
        Photograph = photograph;
        Projection = projection;
        Tones = tones;
        Sight = PaperSight.Of(response.Paper.Sensitivity, response.Light.ToSpectrum());
    }

    /// <summary>The camera, tilted as the frame says.</summary>
    public PinholeCamera Camera { get; }

    /// <summary>The paper in the light of the scene.</summary>
    public PaperResponse Response { get; }

    /// <summary>The photograph; its luminances are known if a file or a reading says so. Null where there is none.</summary>
    public ScenePhotograph? Photograph { get; }

    /// <summary>What the sheet sees of the photograph; null without one, or without its angle.</summary>
    public SheetProjection? Projection { get; }

    /// <summary>The tones that were read.</summary>
    public IReadOnlyList<(Ulid Id, Tone Tone)> Tones { get; }

    /// <summary>How the paper sees colours.</summary>
    public PaperSight Sight { get; }

    /// <summary>The scene of a sheet; null while it has no camera or paper.</summary>
    /// <exception cref="RefusalException">The camera or the paper as written down cannot be used.</exception>
    public static async Task<MeteredScene?> OfAsync(SheetState sheet, SheetScene scenes, LightColour light)
    {
        if (sheet.Camera is not { } camera || sheet.Paper is not { } paper || sheet.Sheet is not { } one)
        {
            return null;
        }

        var photograph = await scenes.PhotographAsync(sheet);
        var projection = photograph is null ? null : scenes.ProjectionOf(sheet, photograph);
        return new MeteredScene(
            projection?.Camera ?? camera.ToCamera().TiltedTo(Angle.FromDegrees(one.Frame?.Body.AimTiltDegrees ?? 0)),
            PaperResponse.Of(paper.ToPaper(), light),
            photograph is null ? null : Anchored(photograph, one),
            projection,
            [.. one.Tones.Select(tone => (tone.Body.Tone, tone.Body.ToTone(HandReading.UsualSpread)))]);
    }

    /// <summary>The light that the tones were read in, as the journal says; the usual one before the first.</summary>
    public static LightColour LightOf(Sheet? sheet)
        => sheet?.Tones.FirstOrDefault()?.Body.LightKelvin is not { } kelvin
            ? UsualLight
            : LightColour.Known.FirstOrDefault(known => Math.Abs(known.Temperature.Kelvin - kelvin) < 1)
                ?? LightColour.FromTemperature(ColourTemperature.FromKelvin(kelvin));

    /// <summary>The tones where the sheet sees them; those beside it count as lying in its middle.</summary>
    public IReadOnlyList<PlacedTone> Placed()
        => [.. Tones.Select(entry => (Projection is null ? null : TonePlacement.OnSheet(entry.Tone, Projection)) ?? TonePlacement.InTheMiddle(entry.Tone, Camera))];

    private static ScenePhotograph Anchored(ScenePhotograph photograph, Sheet sheet)
    {
        // A meter's reading of a place in the photograph says more than the file does.
        var reading = sheet.Tones.FindLast(tone => tone.Body is { Source: not null and not ReadingSource.Photograph, PhotographX: not null, PhotographY: not null });
        return reading?.Body is { PhotographX: { } x, PhotographY: { } y } body
            ? PhotographMeter.Anchor(photograph, PointInPhotograph.FromFractions(x, y), Luminance.FromCandelasPerSquareMetre(body.LuminanceCandelasPerSquareMetre))
            : photograph;
    }
}
