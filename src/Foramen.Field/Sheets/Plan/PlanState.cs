using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Learning;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Field.Learning;
using Foramen.Field.Sheets.Flash;
using Foramen.Field.Sheets.Motions;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;
using Foramen.Journal.Learning;
using Foramen.Journal.Motions;

namespace Foramen.Field.Sheets.Plan;

/// <summary>
/// Time and flash of a sheet: what is recommended by all that judged sheets taught, what a dragged time or flash would do, and the predicted print. The
/// optics are worked out once; a drag only runs the paper's curve again.
/// </summary>
public sealed class PlanState(SheetState sheet, SheetScene scenes, Lessons lessons)
{
    /// <summary>Pixels on the long side of the preview; a pinhole print has no more to show.</summary>
    public const int LongSide = 640;

    private LearnedPlan? plan;
    private PaperResponse? response;
    private SheetImage? image;
    private PredictedPrint? print;
    private MotionOnSheet? motion;
    private PrintMask? mask;
    private Length spot;
    private byte[] greys = [];

    /// <summary>The scene; null without camera, paper or tones.</summary>
    public MeteredScene? Scene { get; private set; }

    /// <summary>What is recommended; null while nothing can be.</summary>
    public ExposureForecast? Recommended { get; private set; }

    /// <summary>What the time and flash as they stand will do; behind a drag until <see cref="Settle"/>.</summary>
    public ExposureForecast? Forecast { get; private set; }

    /// <summary>The odds of a keeper with the time and flash as they stand: tones, frame, motion and processing together; null while there is no forecast.</summary>
    public SheetOdds? Odds { get; private set; }

    /// <summary>How many judged sheets the plan rests on.</summary>
    public int Teaching => lessons.Beliefs.Evidence.Count;

    /// <summary>The judged sheets that moved the recommendation most.</summary>
    public IReadOnlyList<LessonLine> Why { get; private set; } = [];

    /// <summary>How much lighter than by the label a sheet like this is expected, and how sure that is, stops; null before there is a plan.</summary>
    public (double Mean, double Spread)? Expected { get; private set; }

    /// <summary>The time and flash as they stand.</summary>
    public SheetExposure Exposure { get; private set; }

    /// <summary>Why there is no plan, in a sentence; or why the reading of the flash's surface was refused.</summary>
    public string? Message { get; private set; }

    /// <summary>Luminance of the surface the flash is pointed at, cd/m².</summary>
    public double FlashLuminance { get; private set; }

    /// <summary>The flash that the sheet already has, so that only the time is left to plan; null where none was given or its length is not known.</summary>
    public Duration? FlashGiven => new FlashState(sheet) is { WasGiven: true, GivenSeconds: > 0 and { } seconds } ? Duration.FromSeconds(seconds) : null;

    /// <summary>Whether that is an assumption.</summary>
    public bool FlashIsAssumed { get; private set; }

    /// <summary>Whether there is a print to draw.</summary>
    public bool HasPrint => print is not null;

    /// <summary>Whether something was marked as moving.</summary>
    public bool HasMotion => sheet.Sheet is { Motions.IsEmpty: false };

    /// <summary>Whether the print is drawn as if all stood.</summary>
    public bool AsIfStill { get; set; }

    /// <summary>What is left of what moves; behind a drag until <see cref="Settle"/>, empty before a print was drawn.</summary>
    public IReadOnlyList<MotionLine> Moving { get; private set; } = [];

    /// <summary>Why what moves cannot be drawn, in a sentence.</summary>
    public string? MotionMessage { get; private set; }

    /// <summary>Masks kept for the sheet's camera, or for any.</summary>
    public IReadOnlyList<MaskDefined> Masks => [.. sheet.Session.Ledger.Masks.All
        .Select(mask => mask.Body)
        .Where(mask => mask.Camera is null || mask.Camera == sheet.Sheet?.Started?.Body.Camera)];

    /// <summary>The mask that the print is predicted with; none unless chosen.</summary>
    public Ulid? Mask { get; private set; }

    /// <summary>Why a mask cannot be used, in a sentence.</summary>
    public string? MaskMessage { get; private set; }

    /// <summary>Whether the print shows the subject mirrored, left for right, because the sheet itself will.</summary>
    public bool IsMirrored => response is not null && PrintMask.IsMirrored(response.Paper.Kind);

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
            Recommended = Advised();
            Explain();
            Exposure = known is null || new FlashState(sheet).OffPlanStops is not null
                ? Recommended.Exposure
                : new SheetExposure(Duration.FromSeconds(known.ExposureSeconds), FlashGiven ?? Duration.FromSeconds(known.FlashSeconds));
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
        var spread = PointSpread.Of(projection.Camera, light);
        spot = spread.DiameterHolding(0.8);
        image = SheetImage.Make(LuminanceMap.AsPaperSees(photograph, scene.Sight), projection, LongSide, spread);
        print = Expose(image);
        if (HasMotion)
        {
            PrepareMotion();
            TellMotion();
        }

        greys = new byte[print.Width * print.Height];
    }

    /// <summary>Predicts the print with a mask in the light, or with none. One that cannot be used changes nothing and <see cref="MaskMessage"/> says why.</summary>
    public void UseMask(Ulid? mask)
    {
        MaskMessage = null;
        if (image is null)
        {
            return;
        }

        try
        {
            var definition = mask is null ? null : Masks.Single(one => one.Mask == mask).Definition;
            var chosen = definition?.ToMask();
            print = Expose(chosen is null ? image : image.Masked(chosen, response!.Paper.Kind));
            (Mask, this.mask) = (mask, chosen);
        }
        catch (RefusalException refusal)
        {
            MaskMessage = refusal.Message;
        }
    }

    /// <summary>The print as it stands, 8-bit grey in rows from the top.</summary>
    public Span<byte> Draw()
    {
        if (print is null || response is null)
        {
            return [];
        }

        var exposure = PrintExposure.Of(response, Exposure, plan!.Flash);
        (Moved() is { } moved ? print.ExposedAgain(exposure, moved) : print.ExposedAgain(exposure)).WriteGrey8(greys);
        return greys;
    }

    // A region may lie outside a frame that was moved after it was marked; then the sentence says so and the print is drawn without any.
    private void PrepareMotion()
    {
        try
        {
            motion = MotionOnSheet.Of(image!, SheetMotions.Regions(sheet.Sheet!), spot);
        }
        catch (RefusalException refusal)
        {
            MotionMessage = refusal.Message;
        }
    }

    private SheetImage? Moved()
    {
        if (motion is null || AsIfStill)
        {
            return null;
        }

        var moved = motion.Expose(SheetMotions.Expected(sheet.Sheet!, Exposure.Time), response!, Exposure.Time);
        return mask is null ? moved : moved.Masked(mask, response!.Paper.Kind);
    }

    private void TellMotion()
    {
        if (motion is null)
        {
            return;
        }

        var courses = SheetMotions.Expected(sheet.Sheet!, Exposure.Time);
        var traces = motion.Traces(courses, response!, Exposure, plan!.Flash);
        var flashIsGiven = FlashGiven is not null;
        Moving = [.. sheet.Sheet!.Motions.Select((one, i) => MotionLine.Of(one.Body.Definition, motion.Regions[i], courses[i], traces[i], image!, response!, Exposure, plan.Flash, flashIsGiven))];
    }

    /// <summary>Takes a time from a drag; odds follow with <see cref="Settle"/>.</summary>
    public void TryTime(double seconds) => Exposure = Exposure with { Time = Duration.FromSeconds(Math.Clamp(seconds, 0.1, ExposurePlanner.LongestSeconds)) };

    /// <summary>Takes a flash from a drag, as a part of the first visible tone; what the sheet already has stays.</summary>
    public void TryFlash(double fraction) => Exposure = Exposure with { Flash = FlashGiven ?? FlashTime(fraction) };

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
    public void Settle()
    {
        Forecast = plan?.Planner.Forecast(Exposure);
        Odds = Forecast is null ? null : SheetOdds.Of(Forecast, sheet.Sheet is { } here ? lessons.All.MishapsOf(here) : lessons.All.Mishaps);
        TellMotion();
    }

    /// <summary>The flash as it stands, as a part of the first visible tone.</summary>
    public double FlashFraction => response is null || Exposure.Flash.Seconds <= 0
        ? 0
        : response.EffectiveExposure(plan!.Flash.OnSheet, 1, Exposure.Flash).LuxSeconds / Threshold;

    /// <summary>Takes a reading of the surface the flash is pointed at, and recommends anew.</summary>
    public bool ReadFlashSurface(string reading)
    {
        try
        {
            var fraction = FlashFraction;
            UseFlashAt(ReadingText.Luminance(reading, LightMeter.Usual, "the flash’s surface").CandelasPerSquareMetre);
            Recommended = Advised();
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
    public Bracket? Bracket() => plan is not null && Forecast is not null ? plan.Planner.BracketAround(Forecast) : null;

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
            Odds = Odds!.Total.Fraction,
            LimitedBy = Texts.Words.Learned.Part(Odds.Shares[0].Part),
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

    // As the sheet or its print will be held: masks read right on that, and a direct positive is mirrored.
    private PredictedPrint Expose(SheetImage light) => PredictedPrint.Expose(
        light, response!.Paper.Curve, PrintExposure.Of(response, Exposure, plan!.Flash), new PrintLook { WhiteIsPaper = true, IsMirrored = IsMirrored });

    private double Threshold => FlashEffect.Threshold(response!.Paper.Curve).LuxSeconds;

    private Duration FlashTime(double fraction) => fraction <= 0 || response is null || plan is not { Flash: { IsPossible: true } flash }
        ? default
        : response.TimeFor(LuminousExposure.FromLuxSeconds(fraction * Threshold), flash.OnSheet, 1);

    private ExposureForecast Advised() => plan!.Planner.Forecast(FlashGiven is { } given ? plan.Planner.LikeliestAfter(given) : plan.Planner.Likeliest());

    private void Explain()
    {
        var doublings = plan!.Basis.Paper.DoublingsTo(Recommended!.Exposure.Time);
        var (mean, spread) = lessons.Beliefs.Expect(plan.Basis.Conditions, doublings);
        Expected = (mean.Value, spread.Value);
        Why = LessonLine.Of(sheet.Session.Ledger, lessons.All, lessons.Beliefs, plan.Basis.Conditions, doublings);
    }

    private void UseFlashAt(double? candelas)
    {
        var scene = Scene!;
        FlashIsAssumed = candelas is null;
        var surface = candelas is { } known
            ? Luminance.FromCandelasPerSquareMetre(known)
            : WhiteCard.LuminanceBeside(WhiteCard.InTheLightOf([.. scene.Tones.Select(tone => tone.Tone)]));
        FlashLuminance = surface.CandelasPerSquareMetre;
        var (paper, light) = (scene.Response.Paper, scene.Response.Light);
        plan = lessons.Beliefs.Plan(new PlanBasis
        {
            Paper = paper,
            Light = light,
            Tones = scene.Placed(),
            Flash = FlashSetup.AtSurface(scene.Camera.ImageIlluminance(surface, scene.Camera.HoleOffset)),
            Errors = ExposureErrors.Of(scene.Camera, paper, light),
            Conditions = SheetLesson.ConditionsOf(sheet.Session.Ledger, sheet.Sheet!, light)!,
        });
        response = PaperResponse.Of(plan.Paper, light);
    }
}
