using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Learning;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Tones;

namespace Foramen.Journal.Learning;

/// <summary>
/// One judged sheet: what label and description foretell of the exposure that was really given, beside what was seen. The box as it is described now
/// counts, so that a description corrected later is at once the one that beliefs are stated against.
/// </summary>
/// <remarks>Limit: sheets in the bottle are counted as those processed before on the same outing, whatever was topped up.</remarks>
public static class SheetLesson
{
    private const double LeastJudging = 0.05;
    private static readonly Stops UsualReadingSpread = Stops.FromValue(0.2);

    /// <summary>The evidence of a judged sheet.</summary>
    /// <exception cref="RefusalException">It lacks paper, camera, tones or an exposure, or holds what cannot be.</exception>
    internal static Evidence Of(Ledger ledger, Sheet sheet, KnownGear gear)
    {
        var judgement = sheet.Judgement ?? throw new RefusalException("It has not been judged.");
        var basis = BasisOf(ledger, sheet, gear);
        var exposure = GivenExposure(sheet, basis);
        var landed = new ExposurePlanner(gear.ResponseOf(basis.Paper, KelvinUsed(sheet)), basis.Tones, basis.Flash, basis.Errors).Land(exposure);
        var tones = new List<ToneEvidence>();
        foreach (var said in judgement.Body.Tones ?? [])
        {
            for (var i = 0; i < sheet.Tones.Count; i++)
            {
                // A judgement of the print as a whole says the same of each of its tones, but counts once: it is given to the first.
                var isThis = said.Tone is { } tone ? sheet.Tones[i].Body.Tone == tone : landed[i].FromAim is not null;
                if (!isThis || landed[i].FromAim is null)
                {
                    continue;
                }

                tones.Add(JudgedTones.ToEvidence(basis.Paper, landed[i], Stops.FromValue(said.LighterByStops), LimitOf(said.Fate), JudgingOf(said)));
                break;
            }
        }

        if (tones.Count == 0)
        {
            throw new RefusalException("None of its judged tones was wanted in a certain way, so it says nothing of the exposure.");
        }

        var losses = LossesOf(judgement.Body);
        var upset = judgement.Body.Causes?.Any(cause => cause is MishapCause.Light or MishapCause.Process or MishapCause.Leak) ?? false;
        return SheetEvidence.Of(
            judgement.Order.Id.ToString(),
            EvidenceKind.JudgedSheet,
            judgement.At,
            basis,
            exposure.Time,
            tones,
            losses.Any(loss => loss != SheetLoss.Other) ? null : judgement.Body.Keeper,
            upset);
    }

    /// <summary>A sheet's scene with everything as label and description say; to plan it, or to foretell it.</summary>
    /// <exception cref="RefusalException">It lacks paper, camera or tones, or holds what cannot be.</exception>
    public static PlanBasis BasisOf(Ledger ledger, Sheet sheet) => BasisOf(ledger, sheet, new KnownGear());

    private static PlanBasis BasisOf(Ledger ledger, Sheet sheet, KnownGear gear)
    {
        var started = sheet.Started?.Body;
        var paperItem = started?.Paper is { } box ? ledger.Papers.Find(box) : null;
        var cameraItem = started?.Camera is { } which ? ledger.Cameras.Find(which) : null;
        if (paperItem is null || cameraItem is null)
        {
            throw new RefusalException("It does not say which camera and which box of paper it was made with.");
        }

        if (sheet.Tones.IsEmpty)
        {
            throw new RefusalException("No tone of it was read.");
        }

        var paper = gear.PaperOf(paperItem.Current.Body);
        var frame = sheet.Frame?.Body;
        var camera = cameraItem.At(sheet.Started!.Order).Body.ToCamera().TiltedTo(Angle.FromDegrees(frame?.AimTiltDegrees ?? 0));
        var light = gear.LightOf(paper, KelvinUsed(sheet));
        var projection = ProjectionOf(camera, sheet);
        var tones = sheet.Tones.Select(tone => Placed(tone.Body, camera, projection)).ToList();
        var flash = sheet.Plan?.Body.FlashLuminanceCandelasPerSquareMetre is { } surface
            ? FlashSetup.AtSurface(camera.ImageIlluminance(Luminance.FromCandelasPerSquareMetre(surface), camera.HoleOffset))
            : FlashSetup.None;
        var moved = sheet.HoleEvents.Any(one => one.Light is LightWord.Cloud or LightWord.ThinCloud);
        var errors = gear.ErrorsOf(camera, paper, KelvinUsed(sheet));
        return new PlanBasis
        {
            Paper = paper,
            Light = light,
            Tones = tones,
            Flash = flash,
            Errors = moved ? errors with { Light = Stops.FromValue(0.5) } : errors,
            Conditions = ConditionsOf(ledger, sheet, light)!,
        };
    }

    /// <summary>What bears on a sheet: its box, its camera, the kind of sky, and how many went through the bath before it; null while it has no paper or camera.</summary>
    public static SheetConditions? ConditionsOf(Ledger ledger, Sheet sheet, LightColour light)
        => sheet.Started?.Body is { Paper: { } box, Camera: { } camera } && ledger.Papers.Find(box)?.Current.Body is { } paper
            ? new SheetConditions
            {
                Box = box.ToString(),
                Camera = camera.ToString(),
                Sky = SkyOf(light),
                SheetsInBottle = ProcessedBefore(ledger, sheet),
                LabelSpread = paper.Speed.SdStops is { } speed ? Stops.FromValue(speed) : null,
                FailureSpread = paper.Failure?.ExponentSd is { } failure ? Stops.FromValue(failure) : null,
            }
            : null;

    /// <summary>The kind of sky that a light is learned under: the known light nearest to it in temperature (in mireds, as differences of colour are counted).</summary>
    public static string SkyOf(LightColour light)
        => LightColour.Known.MinBy(known => Math.Abs((1e6 / known.Temperature.Kelvin) - (1e6 / light.Temperature.Kelvin)))!.Name;

    /// <summary>The time given, as time in the metered light; with nothing written of the hole, the planned time.</summary>
    /// <exception cref="RefusalException">The hole was never opened and nothing was planned.</exception>
    public static Duration GivenTime(Sheet sheet, FailureLaw failure)
    {
        var planned = sheet.Plan?.Body.ExposureSeconds;
        if (sheet.HoleEvents.IsEmpty)
        {
            return planned is { } seconds ? Duration.FromSeconds(seconds) : throw new RefusalException("Neither a plan nor the opening of the hole was written down.");
        }

        var record = sheet.TallyAt(sheet.HoleEvents[^1].At);
        var tally = ExposureTally.For(failure, Duration.FromSeconds(Math.Clamp(planned ?? record.ElapsedSeconds, 0.01, 86_400)));
        var given = tally.Progress(record.Spans) * tally.Planned.Seconds;
        return given is >= 0.01 and <= 86_400
            ? Duration.FromSeconds(given)
            : throw new RefusalException("The times of its opening and closing make no exposure.");
    }

    /// <summary>Time and flash that a sheet was given; no flash where none was possible in the scene as it is known.</summary>
    /// <exception cref="RefusalException">As for <see cref="GivenTime"/>.</exception>
    public static SheetExposure GivenExposure(Sheet sheet, PlanBasis basis) => new(
        GivenTime(sheet, basis.Paper.Failure),
        Duration.FromSeconds(basis.Flash.IsPossible ? sheet.Flashes.Sum(one => one.GivenSeconds ?? 0) : 0));

    /// <summary>Colour temperature of the light of a sheet, K: as planned, or else as its tones were read; null where nobody said.</summary>
    public static double? KelvinOf(Sheet sheet)
        => sheet.Plan?.Body.LightKelvin ?? sheet.Tones.Select(tone => tone.Body.LightKelvin).FirstOrDefault(one => one is not null);

    // Daylight where nobody said.
    private static double KelvinUsed(Sheet sheet) => Math.Clamp(KelvinOf(sheet) ?? 5503, 1500, 25_000);

    // A measured density is known better than the eye knows a tone, but never perfectly: places on it are found by hand.
    private static Stops? JudgingOf(JudgedTone said) => said.SdStops is { } sd ? Stops.FromValue(Math.Clamp(sd, LeastJudging, ToneEvidence.ByEye.Value)) : null;

    /// <summary>What spoilt a judged sheet besides its tones.</summary>
    public static IReadOnlyList<SheetLoss> LossesOf(PrintJudged judgement) => judgement.Keeper
        ? []
        : [.. (judgement.Causes ?? []).Select(cause => cause switch
        {
            MishapCause.Frame => SheetLoss.Frame,
            MishapCause.Motion => SheetLoss.Motion,
            MishapCause.Process or MishapCause.Leak => SheetLoss.Process,
            _ => SheetLoss.Other,
        })];

    internal static (double MarginPercent, bool Cut)? FrameOf(Sheet sheet)
        => MarginOf(sheet) is { } smallest ? (smallest, sheet.Judgement!.Body.Causes?.Contains(MishapCause.Frame) ?? false) : null;

    /// <summary>The smallest margin that a sheet's subject was framed with, percent of the side, −50 to 50; null where none was written down.</summary>
    public static double? MarginOf(Sheet sheet)
    {
        var frame = sheet.Frame?.Body;
        double?[] margins = [frame?.MarginLeftPercent, frame?.MarginRightPercent, frame?.MarginTopPercent, frame?.MarginBottomPercent];
        return margins.Min() is { } smallest ? Math.Clamp(smallest, -50, 50) : null;
    }

    // A sheet that is still to be developed comes after all that were.
    internal static double ProcessedBefore(Ledger ledger, Sheet sheet)
        => sheet.Started?.Body.Outing is { } outing && (sheet.Bath?.Started?.Order ?? sheet.Judgement?.Order) is var now
            ? ledger.SheetsOf(outing).Count(other => other.Id != sheet.Id && other.Bath?.Started is { } bath && (now is not { } own || bath.Order < own))
            : 0;

    private static ObservedLimit LimitOf(ToneFate? fate) => fate switch
    {
        ToneFate.Burnt => ObservedLimit.AtLeast,
        ToneFate.Blocked => ObservedLimit.AtMost,
        _ => ObservedLimit.Exact,
    };

    private static SheetProjection? ProjectionOf(PinholeCamera camera, Sheet sheet)
    {
        if (sheet is not { Photograph.Body: { } photo, Frame.Body: { } frame })
        {
            return null;
        }

        var field = frame.PhotographFieldDegrees is { } degrees
            ? PhotographField.FromHorizontalAngle(photo.WidthPixels, photo.HeightPixels, Angle.FromDegrees(degrees))
            : photo.Facts?.FocalLength35Millimetres is { } focal
                ? PhotographField.FromFocalLength35(photo.WidthPixels, photo.HeightPixels, Length.FromMillimetres(focal))
                : null;
        return field is null
            ? null
            : SheetProjection.Of(
                camera,
                field,
                frame.Orientation == SheetOrientation.Upright ? SheetFormat.Upright : SheetFormat.Level,
                SheetAim.FromAngles(Angle.FromDegrees(frame.AimPanDegrees ?? 0)));
    }

    private static PlacedTone Placed(ToneRead read, PinholeCamera camera, SheetProjection? projection)
    {
        var tone = read.ToTone(UsualReadingSpread);
        return (projection is null ? null : TonePlacement.OnSheet(tone, projection)) ?? TonePlacement.InTheMiddle(tone, camera);
    }
}
