using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Exposure;

/// <summary>Papers and tones of the invented canal basin, behind an f/180 hole.</summary>
internal static class ExposureExamples
{
    public const double FNumber = 180;

    /// <summary>EI 3 as people quote it for such papers: found at two minutes in noon light.</summary>
    public static PhotographicPaper Positive { get; } = Paper(PaperKind.DirectPositive, 3, 120);

    public static PhotographicPaper Negative { get; } = Paper(PaperKind.NegativeWorking, 6, 60);

    public static Illuminance OnSheet(double candelas) => Illuminance.FromLux(Math.PI * candelas / (4 * FNumber * FNumber));

    public static PlacedTone Tone(string name, Rendering rendering, double candelas, double spread = 0.15)
        => new(name, rendering, OnSheet(candelas), 1, 1, Stops.FromValue(spread), LuminanceLimit.Exact);

    public static ExposurePlanner Planner(PhotographicPaper paper, IReadOnlyList<PlacedTone> tones, double cardCandelas = 0, ExposureErrors? errors = null)
        => new(
            PaperResponse.Of(paper, LightColour.Noon),
            tones,
            cardCandelas > 0 ? FlashSetup.AtSurface(OnSheet(cardCandelas)) : FlashSetup.None,
            errors ?? new ExposureErrors());

    public static PhotographicPaper Paper(PaperKind kind, double index, double atSeconds) => PhotographicPaper.FromSpeed(
        "box", kind, Density.FromValue(0.08), Density.FromValue(1.98), kind == PaperKind.DirectPositive ? 86 : 110,
        ExposureIndex.Found(index, Duration.FromSeconds(atSeconds), LightColour.Noon, MeterConstants.Usual),
        PaperSensitivity.BlueSensitive, SchwarzschildFailure.Assumed);
}
