using Foramen.Engine.Exposure;
using Foramen.Engine.Learning;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal.Photographers;

/// <summary>
/// Takes the Engine's advice: the same readings, sky, label and judged results that any photographer sees, turned into evidence and plans by the room
/// Learning, with its usual assumptions. Knows nothing of the simulator.
/// </summary>
internal sealed class ForamenPhotographer : IPhotographer
{
    private static readonly DateTimeOffset Begin = new(2026, 5, 9, 8, 0, 0, TimeSpan.Zero);

    private readonly List<Evidence> evidence = [];
    private readonly List<IReadOnlyList<SheetLoss>> losses = [];
    private readonly List<ForecastOutcome> outcomes = [];
    private Probability tones;

    public ExposeLine Decide(SheetLine seen)
    {
        var beliefs = Beliefs.From(evidence, At(evidence.Count));
        var plan = beliefs.Plan(BasisOf(seen));
        SheetExposure exposure;
        try
        {
            exposure = plan.Planner.Likeliest();
        }
        catch (RefusalException)
        {
            // Too dark for any advice; an outing goes on all the same, with the longest time there is.
            exposure = new SheetExposure(Duration.FromSeconds(ExposurePlanner.LongestSeconds), default);
        }

        var mishaps = MishapRates.From(losses);
        tones = plan.Planner.OddsFor(exposure);
        return new ExposeLine
        {
            Seconds = exposure.Time.Seconds,
            FlashSeconds = exposure.Flash.Seconds,
            Odds = OddsCalibration.From(outcomes).Calibrated(tones).Fraction * mishaps.NoMishap.Fraction,
        };
    }

    public void Learn(SheetLine seen, ExposeLine done, JudgedLine judged)
    {
        var spoilt = judged.Causes.Any(cause => cause is "frame" or "motion" or "process" or "leak");
        if (!spoilt)
        {
            outcomes.Add(new ForecastOutcome(tones, judged.Keeper));
        }

        losses.Add([.. judged.Causes.Select(LossOf)]);
        var basis = BasisOf(seen);
        var landed = new ExposurePlanner(PaperResponse.Of(basis.Paper, basis.Light), basis.Tones, basis.Flash, basis.Errors)
            .Land(new SheetExposure(Duration.FromSeconds(done.Seconds), Duration.FromSeconds(basis.Flash.IsPossible ? done.FlashSeconds : 0)));
        var evidenceOfTones = judged.Tones
            .Select(tone => (Said: tone, Foretold: landed.FirstOrDefault(one => one.Tone.Name == tone.Name)))
            .Where(pair => pair.Foretold is { FromAim: not null })
            .Select(pair => JudgedTones.ToEvidence(basis.Paper, pair.Foretold!, Stops.FromValue(pair.Said.LighterByStops), pair.Said.Lost switch
            {
                "burnt" => ObservedLimit.AtLeast,
                "blocked" => ObservedLimit.AtMost,
                _ => ObservedLimit.Exact,
            }));
        evidence.Add(SheetEvidence.Of(
            (evidence.Count + 1).ToString("0000", System.Globalization.CultureInfo.InvariantCulture),
            EvidenceKind.JudgedSheet,
            At(evidence.Count),
            basis,
            Duration.FromSeconds(done.Seconds),
            [.. evidenceOfTones],
            spoilt ? null : judged.Keeper,
            judged.Causes.Any(cause => cause is "light" or "process" or "leak")));
    }

    private static DateTimeOffset At(int sheet) => Begin.AddMinutes(20 * sheet);

    private static SheetLoss LossOf(string cause) => cause switch
    {
        "frame" => SheetLoss.Frame,
        "motion" => SheetLoss.Motion,
        "process" or "leak" => SheetLoss.Process,
        _ => SheetLoss.Other,
    };

    private static PlanBasis BasisOf(SheetLine seen)
    {
        var light = LightOf(seen.Sky);
        var paper = PaperOf(seen.Label);
        return new PlanBasis
        {
            Paper = paper,
            Light = light,
            Tones = [.. seen.Tones.Select(tone => new PlacedTone(
                tone.Name, RenderingOf(tone.Rendering), OnSheet(tone.Ev, seen.FNumber), 1, 1, Stops.FromValue(0.15), LuminanceLimit.Exact))],
            Flash = seen.CardEv is { } card ? FlashSetup.AtSurface(OnSheet(card, seen.FNumber)) : FlashSetup.None,
            Conditions = new SheetConditions { Box = "box", Camera = "camera", Sky = seen.Sky, SheetsInBottle = seen.SheetsInBottle },
            Errors = new ExposureErrors { Light = LightDrift.For(seen.Sky) },
        };
    }

    private static Illuminance OnSheet(double ev, double fNumber)
    {
        var luminance = LightMeter.Usual.LuminanceFrom(ExposureValue.FromAtIso100(ev));
        return Illuminance.FromLux(Math.PI * luminance.CandelasPerSquareMetre / (4 * fNumber * fNumber));
    }

    private static LightColour LightOf(string sky)
        => LightColour.Known.FirstOrDefault(colour => string.Equals(colour.Name, sky, StringComparison.OrdinalIgnoreCase)) ?? LightColour.Noon;

    private static PhotographicPaper PaperOf(LabelSeen label)
    {
        var kind = label.Kind == "negative" ? PaperKind.NegativeWorking : PaperKind.DirectPositive;
        return PhotographicPaper.FromSpeed(
            "box",
            kind,
            Density.FromValue(label.DMin),
            Density.FromValue(label.DMax),
            label.IsoRange,
            ExposureIndex.Found(label.ExposureIndex, Duration.FromSeconds(label.AtSeconds), LightColour.Noon, MeterConstants.Usual),
            PaperSensitivity.BlueSensitive,
            SchwarzschildFailure.FromExponent(label.FailureExponent));
    }

    private static Rendering RenderingOf(string rendering) => rendering switch
    {
        "openShadow" => Rendering.OpenShadow,
        "mid" => Rendering.Mid,
        "texturedHighlight" => Rendering.TexturedHighlight,
        "mayBurn" => Rendering.MayBurn,
        "mayBlock" => Rendering.MayBlock,
        _ => throw new RefusalException($"The rendering \"{rendering}\" is not known; it should be openShadow, mid, texturedHighlight, mayBurn or mayBlock."),
    };
}
