namespace Foramen.Rehearsal.Worlds;

/// <summary>
/// What is hidden in a world and does not change from sheet to sheet: a box that is not what its label says, a meter and a hole that are off, skies whose
/// colour the paper sees in its own way, a developer that tires, how far sheets scatter.
/// </summary>
internal sealed class WorldTruth
{
    /// <summary>lg2 of the luminance in cd/m² of EV 0 at ISO 100.</summary>
    public static readonly double StopsAtEvZero = Math.Log2(MeterK / 100);

    /// <summary>f-number of the hole.</summary>
    public const double FNumber = 180;

    private const double MeterK = 12.5;

    private static readonly double OnSheet = Math.Log2(Math.PI / (4 * FNumber * FNumber));

    private readonly HiddenCurve curve;
    private readonly HiddenFailure failure;
    private readonly double[] skyBias;
    private readonly double paperZero;
    private readonly double holeBias;
    private readonly HiddenBand shadow;
    private readonly HiddenBand middle;
    private readonly HiddenBand light;

    private WorldTruth(WorldLabel label, WorldFamily family, Chance chance)
    {
        Label = label;
        var held = family == WorldFamily.HeldOut;
        chance.Begin(WorldPart.Curve);
        var curveFamily = held ? CurveFamily.TwoEmulsions : (CurveFamily)chance.Below(4);
        var range = label.Seen.IsoRange * Math.Exp(chance.Normal(0.10)) / 30.103;
        curve = HiddenCurve.Of(curveFamily, range, label.FirstTone, label.Middle, mirrored: !label.IsNegative);
        chance.Begin(WorldPart.Failure);
        var failureFamily = held ? FailureFamily.Bent : (FailureFamily)chance.Below(3);
        failure = HiddenFailure.Draw(failureFamily, chance);
        chance.Begin(WorldPart.Clouds);
        var cloudFamily = held ? CloudFamily.RampWithDips : (CloudFamily)chance.Below(2);
        Clouds = new HiddenClouds(cloudFamily, chance);
        chance.Begin(WorldPart.Chemistry);
        var chemistryFamily = held ? ChemistryFamily.Refreshed : (ChemistryFamily)chance.Below(3);
        Chemistry = new HiddenChemistry(chemistryFamily, chance);
        Families = (curveFamily, failureFamily, cloudFamily, chemistryFamily);

        // At its own time in noon light the label is right up to the box's own speed.
        chance.Begin(WorldPart.Biases);
        var labelStops = Math.Log2(Math.PI / 4 * MeterK / label.Seen.ExposureIndex) - Math.Log2(label.Seen.AtSeconds) + failure.StopsOf(label.Seen.AtSeconds);
        paperZero = labelStops - chance.Normal(1.0);
        MeterBias = chance.Normal(0.5);
        holeBias = chance.Normal(0.15);
        FlashBias = chance.Normal(0.3);
        SheetScatter = chance.Between(0.12, 0.32);
        ReadingScatter = chance.Between(0.08, 0.2);
        JudgingScatter = chance.Between(0.12, 0.3);
        BadJudgement = chance.Between(0, 0.05);
        FrameMiss = chance.Between(0.01, 0.06);
        MotionMiss = chance.Between(0.01, 0.05);
        Stay = chance.Between(0.6, 0.95);
        chance.Begin(WorldPart.Skies);
        skyBias = [.. SkyTruth.All.Select(each => (each.Actinic * chance.Between(0.8, 1.2)) + chance.Normal(0.3))];
        Skies = [chance.Below(SkyTruth.All.Count), chance.Below(SkyTruth.All.Count), chance.Below(SkyTruth.All.Count)];
        (shadow, middle, light) = (Band("openShadow"), Band("mid"), Band("texturedHighlight"));
    }

    public WorldLabel Label { get; }

    public (CurveFamily Curve, FailureFamily Failure, CloudFamily Clouds, ChemistryFamily Chemistry) Families { get; }

    public HiddenClouds Clouds { get; }

    public HiddenChemistry Chemistry { get; }

    /// <summary>Stops that every reading is too high by.</summary>
    public double MeterBias { get; }

    /// <summary>Stops that the flash does more than its reading says.</summary>
    public double FlashBias { get; }

    public double SheetScatter { get; }

    public double ReadingScatter { get; }

    public double JudgingScatter { get; }

    /// <summary>How often a judgement is worth little.</summary>
    public double BadJudgement { get; }

    public double FrameMiss { get; }

    public double MotionMiss { get; }

    /// <summary>How often the next sheet meets the same sky.</summary>
    public double Stay { get; }

    /// <summary>The skies that may come.</summary>
    public int[] Skies { get; }

    /// <summary>A truth behind a label.</summary>
    public static WorldTruth Draw(WorldLabel label, WorldFamily family, Chance chance) => new(label, family, chance);

    /// <summary>Stops of exposure on the true curve that a tone without flash gets.</summary>
    /// <param name="sky">Which sky.</param>
    /// <param name="sheetsInBottle">Sheets that went through the developer.</param>
    /// <param name="luminanceStops">lg2 of its luminance in cd/m².</param>
    /// <param name="seconds">The time.</param>
    public double Stops(int sky, int sheetsInBottle, double luminanceStops, double seconds)
        => luminanceStops + OnSheet + holeBias + skyBias[sky] - Chemistry.LossAfter(sheetsInBottle) + failure.StopsOf(seconds) - paperZero;

    /// <summary>Where a tone of this rendering must land; null where it may do what it likes.</summary>
    public HiddenBand? BandOf(string rendering) => rendering switch
    {
        "openShadow" => shadow,
        "mid" => middle,
        "texturedHighlight" => light,
        _ => null,
    };

    public bool Kept(LandedTone landed, HiddenBand band) => landed.Total >= band.Low && landed.Total <= band.High && IsSeen(landed);

    /// <summary>Whether a tone has lost its detail: <c>burnt</c>, <c>blocked</c>, or neither.</summary>
    public string? Lost(LandedTone landed)
    {
        var share = curve.ShareAt(landed.Total);
        var (burnt, blocked) = Label.IsNegative
            ? (share > 0.92, share < Label.FirstTone || !IsSeen(landed))
            : (share < Label.FirstTone, 1 - share < Label.FirstTone || !IsSeen(landed));
        return burnt ? "burnt" : blocked ? "blocked" : null;
    }

    /// <summary>Seconds of flash at a card that give a fraction of the first visible tone, by bisection.</summary>
    public double FlashFor(int sky, int sheetsInBottle, double cardStops, double fraction)
    {
        var threshold = curve.StopsFor(Label.IsNegative ? Label.FirstTone : 1 - Label.FirstTone) + Math.Log2(fraction);
        var (low, high) = (-12.0, 13.0);
        for (var i = 0; i < 40; i++)
        {
            var at = (low + high) / 2;
            (low, high) = Stops(sky, sheetsInBottle, cardStops, Math.Pow(2, at)) + FlashBias < threshold ? (at, high) : (low, at);
        }

        return Math.Pow(2, low);
    }

    private HiddenBand Band(string rendering) => HiddenBand.Of(curve, rendering, Label.IsNegative, Label.Min, Label.Net)!.Value;

    private bool IsSeen(LandedTone landed)
        => landed.Flash <= 0 || Math.Abs(curve.ShareAt(landed.Total) - curve.ShareAt(Math.Log2(landed.Flash))) * Label.Net >= HiddenBand.FirstTone;
}
