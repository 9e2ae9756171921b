using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Sheets.Plan;

/// <summary>
/// Time and flash of a sheet: what is recommended, what a dragged time or flash would do, and the predicted print. The optics are worked out once;
/// a drag only runs the paper's curve again.
/// </summary>
public sealed class PlanState(SheetState sheet, SheetScene scenes)
{
    /// <summary>Pixels on the long side of the preview; a pinhole print has no more to show.</summary>
    public const int LongSide = 640;

    private ExposurePlanner? planner;
    private FlashSetup flash = FlashSetup.None;
    private PredictedPrint? print;
    private byte[] greys = [];

    /// <summary>The scene; null without camera, paper or tones.</summary>
    public MeteredScene? Scene { get; private set; }

    /// <summary>What is recommended; null while nothing can be.</summary>
    public ExposureForecast? Recommended { get; private set; }

    /// <summary>What the time and flash as they stand will do; behind a drag until <see cref="Settle"/>.</summary>
    public ExposureForecast? Forecast { get; private set; }

    /// <summary>The time and flash as they stand.</summary>
    public SheetExposure Exposure { get; private set; }

    /// <summary>Why there is no plan, in a sentence; or why the reading of the flash's surface was refused.</summary>
    public string? Message { get; private set; }

    /// <summary>Luminance of the surface the flash is pointed at, cd/m².</summary>
    public double FlashLuminance { get; private set; }

    /// <summary>Whether that is an assumption.</summary>
    public bool FlashIsAssumed { get; private set; }

    /// <summary>Whether there is a print to draw.</summary>
    public bool HasPrint => print is not null;

    /// <summary>Size of the predicted print, pixels.</summary>
    public (int Width, int Height) PrintSize => print is null ? (0, 0) : (print.Width, print.Height);

    /// <summary>Part of the sheet that the photograph does not cover.</summary>
    public double UnknownShare => print is null ? 0 : 1 - print.KnownShare;

    /// <summary>Reads the journal and recommends.</summary>
    public async Task LoadAsync()
    {
        try
        {
            Scene = await MeteredScene.OfAsync(sheet, scenes, MeteredScene.LightOf(sheet.Sheet));
            if (Scene is not { Tones.Count: > 0 })
            {
                return;
            }

            var known = sheet.Sheet?.Plan?.Body;
            UseFlashAt(known?.FlashLuminanceCandelasPerSquareMetre);
            Recommended = planner!.Recommend();
            Exposure = known is null
                ? Recommended.Exposure
                : new SheetExposure(Duration.FromSeconds(known.ExposureSeconds), Duration.FromSeconds(known.FlashSeconds));
            Settle();
        }
        catch (RefusalException refusal)
        {
            Message = refusal.Message;
        }
    }

    /// <summary>Works out the optics of the print; the long part, once.</summary>
    public void PreparePrint()
    {
        if (print is not null || Scene is not { Photograph: { WhiteLuminance: not null } photograph, Projection: { } projection } scene)
        {
            return;
        }

        var light = PaperLight.Of(scene.Response.Light.ToSpectrum(), scene.Response.Paper.Sensitivity);
        var image = SheetImage.Make(
            LuminanceMap.AsPaperSees(photograph, scene.Sight), projection, LongSide, PointSpread.Of(projection.Camera, light));
        print = PredictedPrint.Expose(
            image, scene.Response.Paper.Curve, PrintExposure.Of(scene.Response, Exposure, flash), new PrintLook { WhiteIsPaper = true });
        greys = new byte[print.Width * print.Height];
    }

    /// <summary>The print as it stands, 8-bit grey in rows from the top.</summary>
    public Span<byte> Draw()
    {
        if (print is null || Scene is null)
        {
            return [];
        }

        print.ExposedAgain(PrintExposure.Of(Scene.Response, Exposure, flash)).WriteGrey8(greys);
        return greys;
    }

    /// <summary>Takes a time from a drag; odds follow with <see cref="Settle"/>.</summary>
    public void TryTime(double seconds) => Exposure = Exposure with { Time = Duration.FromSeconds(Math.Clamp(seconds, 0.1, ExposurePlanner.LongestSeconds)) };

    /// <summary>Takes a flash from a drag, as a part of the first visible tone.</summary>
    public void TryFlash(double fraction) => Exposure = Exposure with { Flash = FlashTime(fraction) };

    /// <summary>Goes back to what is recommended.</summary>
    public void Reset()
    {
        if (Recommended is { } recommended)
        {
            Exposure = recommended.Exposure;
            Settle();
        }
    }

    /// <summary>Works out odds and tones for the time and flash as they stand.</summary>
    public void Settle() => Forecast = planner?.Forecast(Exposure);

    /// <summary>The flash as it stands, as a part of the first visible tone.</summary>
    public double FlashFraction => Scene is null || Exposure.Flash.Seconds <= 0
        ? 0
        : Scene.Response.EffectiveExposure(flash.OnSheet, 1, Exposure.Flash).LuxSeconds / Threshold;

    /// <summary>Takes a reading of the surface the flash is pointed at, and recommends anew.</summary>
    public bool ReadFlashSurface(string reading)
    {
        try
        {
            var fraction = FlashFraction;
            UseFlashAt(ReadingText.Luminance(reading, LightMeter.Usual, "the flash’s surface").CandelasPerSquareMetre);
            Recommended = planner!.Recommend();
            TryFlash(fraction);
            Settle();
            Message = null;
            return true;
        }
        catch (RefusalException refusal)
        {
            Message = refusal.Message;
            return false;
        }
    }

    /// <summary>Two sheets instead of one.</summary>
    public Bracket? Bracket() => planner is not null && Forecast is not null ? planner.BracketAround(Forecast) : null;

    /// <summary>Writes the plan.</summary>
    public Task<bool> KeepAsync()
    {
        Settle();
        var forecast = Forecast!;
        return sheet.WriteAsync(new PlanMade
        {
            Sheet = sheet.Id,
            ExposureSeconds = forecast.Exposure.Time.Seconds,
            FlashSeconds = forecast.Exposure.Flash.Seconds,
            FlashFraction = forecast.FlashFraction,
            FlashLuminanceCandelasPerSquareMetre = forecast.Exposure.Flash.Seconds > 0 ? FlashLuminance : null,
            Odds = forecast.Odds.Fraction,
            LimitedBy = Texts.Words.Plan.Source(forecast.LimitedBy),
            LightKelvin = Scene!.Response.Light.Temperature.Kelvin,
            Tones =
            [
                .. forecast.Tones.Select((tone, i) => new PlannedTone
                {
                    Tone = Scene.Tones[i].Id,
                    Density = tone.Density.Value,
                    DensitySd = tone.DensitySpread,
                    Fate = FateOf(tone.Outcome),
                    FromAimStops = tone.FromAim?.Value,
                    ChanceAsWanted = tone.ChanceAsWanted.Fraction,
                }),
            ],
        });
    }

    /// <summary>An outcome in the journal's words.</summary>
    public static ToneFate FateOf(ToneOutcome outcome) => outcome switch
    {
        ToneOutcome.TooDark => ToneFate.TooDark,
        ToneOutcome.TooLight => ToneFate.TooLight,
        ToneOutcome.Burnt => ToneFate.Burnt,
        ToneOutcome.Blocked => ToneFate.Blocked,
        _ => ToneFate.AsWanted,
    };

    private double Threshold => Foramen.Engine.Paper.FlashEffect.Threshold(Scene!.Response.Paper.Curve).LuxSeconds;

    private Duration FlashTime(double fraction) => fraction <= 0 || Scene is null || !flash.IsPossible
        ? default
        : Scene.Response.TimeFor(LuminousExposure.FromLuxSeconds(fraction * Threshold), flash.OnSheet, 1);

    private void UseFlashAt(double? candelas)
    {
        var scene = Scene!;
        FlashIsAssumed = candelas is null;
        var surface = candelas is { } known
            ? Luminance.FromCandelasPerSquareMetre(known)
            : WhiteCard.LuminanceBeside(WhiteCard.InTheLightOf([.. scene.Tones.Select(tone => tone.Tone)]));
        FlashLuminance = surface.CandelasPerSquareMetre;
        flash = FlashSetup.AtSurface(scene.Camera.ImageIlluminance(surface, scene.Camera.HoleOffset));
        planner = new ExposurePlanner(
            scene.Response, scene.Placed(), flash, ExposureErrors.Of(scene.Camera, scene.Response.Paper, scene.Response.Light));
    }
}
