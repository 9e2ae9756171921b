using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Bottles;

/// <summary>
/// What sheets ask of a developer: their area from the camera, their mean density from what was stated, else from the planned tones. Where the print
/// was judged, each planned tone is moved along the paper's curve by what the judgement says against the aim, and tones that were not judged by the
/// mean of those that were. The plain mean of a few tones stands for the mean of the picture: a rough guess.
/// </summary>
public sealed class SheetLoads(Ledger ledger, Density assumed)
{
    // The curve has no exposure for its very ends.
    private const double FromTheEnds = 0.01;

    private readonly Dictionary<PaperDefinition, PhotographicPaper?> papers = new(ReferenceEqualityComparer.Instance);

    /// <summary>Area of a sheet whose camera is not known: 102 × 127 mm.</summary>
    public static Area AssumedArea { get; } = Area.FromSides(Length.FromMillimetres(102), Length.FromMillimetres(127));

    /// <summary>What a sheet asks for.</summary>
    /// <param name="sheet">The sheet; null where only its name is known.</param>
    /// <param name="stated">Its mean density above white as written down, if it was.</param>
    public SheetLoad Of(Sheet? sheet, double? stated)
    {
        var camera = sheet is null ? null : ledger.CameraOf(sheet)?.Body;
        var area = camera is null
            ? AssumedArea
            : Area.FromSides(Length.FromMillimetres(camera.SheetWidthMillimetres), Length.FromMillimetres(camera.SheetHeightMillimetres));
        var (density, source) = stated is { } given ? (Density.FromValue(given), DensitySource.Stated) : FromPlan(sheet);
        return new SheetLoad(area, camera is not null, density, source);
    }

    private (Density Density, DensitySource Source) FromPlan(Sheet? sheet)
    {
        if (sheet?.Plan?.Body.Tones is not { Count: > 0 } tones || PaperOf(sheet) is not { } paper)
        {
            return (assumed, DensitySource.Assumed);
        }

        var shifts = ShiftsOf(sheet, tones, paper.Kind);
        var common = shifts.Count > 0 ? shifts.Values.Average() : 0;
        var mean = tones.Average(tone => Moved(paper.Curve, tone.Density, shifts.GetValueOrDefault(tone.Tone, common)));
        return (
            Density.FromValue(Math.Clamp(mean - paper.Curve.MinimumDensity.Value, 0, Density.Max)),
            shifts.Count > 0 ? DensitySource.Judged : DensitySource.Predicted);
    }

    /// <summary>By how many stops of exposure each judged tone lies from its prediction.</summary>
    private static Dictionary<Ulid, double> ShiftsOf(Sheet sheet, IReadOnlyList<PlannedTone> tones, PaperKind kind)
    {
        var verdicts = sheet.Judgement?.Body.Tones ?? [];
        var whole = verdicts.LastOrDefault(verdict => verdict.Tone is null);
        var shifts = new Dictionary<Ulid, double>();
        foreach (var tone in tones)
        {
            var verdict = verdicts.LastOrDefault(each => each.Tone == tone.Tone) ?? whole;
            if (verdict is not null && tone.FromAimStops is { } predicted)
            {
                var judged = kind == PaperKind.DirectPositive ? verdict.LighterByStops : -verdict.LighterByStops;
                shifts[tone.Tone] = judged - predicted;
            }
        }

        return shifts;
    }

    private static double Moved(CharacteristicCurve curve, double density, double stops)
    {
        var (low, high) = (curve.MinimumDensity.Value + FromTheEnds, curve.MaximumDensity.Value - FromTheEnds);
        if (stops == 0 || low >= high)
        {
            return density;
        }

        var exposure = curve.ExposureFor(Density.FromValue(Math.Clamp(density, low, high))).LuxSeconds * Math.Pow(2, stops);
        return curve.DensityAtLg(Math.Log10(exposure));
    }

    private PhotographicPaper? PaperOf(Sheet sheet)
    {
        if (ledger.PaperOf(sheet)?.Body is not { } definition)
        {
            return null;
        }

        if (!papers.TryGetValue(definition, out var paper))
        {
            try
            {
                paper = definition.ToPaper();
            }
            catch (RefusalException)
            {
                // A paper that cannot be computed with predicts nothing; whoever uses the paper itself is told why.
                paper = null;
            }

            papers[definition] = paper;
        }

        return paper;
    }
}
