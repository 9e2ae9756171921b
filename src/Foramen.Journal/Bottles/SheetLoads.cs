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

        var (shifts, judged) = ShiftsOf(sheet, tones, paper.Kind);
        var sum = 0.0;
        for (var i = 0; i < tones.Count; i++)
        {
            sum += Moved(paper.Curve, tones[i].Density, shifts[i]);
        }

        return (
            Density.FromValue(Math.Clamp((sum / tones.Count) - paper.Curve.MinimumDensity.Value, 0, Density.Max)),
            judged ? DensitySource.Judged : DensitySource.Predicted);
    }

    /// <summary>By how many stops of exposure each tone lies from its prediction, and whether any was judged.</summary>
    private static (double[] Shifts, bool Judged) ShiftsOf(Sheet sheet, IReadOnlyList<PlannedTone> tones, PaperKind kind)
    {
        var shifts = new double[tones.Count];
        if (sheet.Judgement?.Body.Tones is not { Count: > 0 } verdicts)
        {
            return (shifts, false);
        }

        var known = new bool[tones.Count];
        var (sum, count) = (0.0, 0);
        for (var i = 0; i < tones.Count; i++)
        {
            if (VerdictOn(tones[i].Tone, verdicts) is { } verdict && tones[i].FromAimStops is { } predicted)
            {
                shifts[i] = (kind == PaperKind.DirectPositive ? verdict.LighterByStops : -verdict.LighterByStops) - predicted;
                (known[i], sum, count) = (true, sum + shifts[i], count + 1);
            }
        }

        for (var i = 0; i < tones.Count && count > 0; i++)
        {
            shifts[i] = known[i] ? shifts[i] : sum / count;
        }

        return (shifts, count > 0);
    }

    /// <summary>The last verdict on a tone, else the last on the print as a whole.</summary>
    private static JudgedTone? VerdictOn(Ulid tone, IReadOnlyList<JudgedTone> verdicts)
    {
        JudgedTone? whole = null;
        for (var i = verdicts.Count - 1; i >= 0; i--)
        {
            if (verdicts[i].Tone == tone)
            {
                return verdicts[i];
            }

            whole = whole is null && verdicts[i].Tone is null ? verdicts[i] : whole;
        }

        return whole;
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
