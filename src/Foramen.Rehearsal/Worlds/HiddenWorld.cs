using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal.Worlds;

/// <summary>
/// An outing with a hidden truth: a box that is not what its label says, a meter and a hole that are off, skies whose colour the paper sees in its own
/// way, developer that tires, sheets that scatter, frames that miss. Its models are not the Engine's: other curves, other failure, clouds that
/// remember. All of it follows from seed and sheet number; what a photographer does changes only the sheet at hand.
/// </summary>
internal sealed class HiddenWorld : IWorld
{
    private const double MeterK = 12.5;
    private const double FNumber = 180;

    private static readonly double[] FlashFractions = [0, 0.25, 0.5, 0.8, 1];

    private readonly long seed;
    private readonly LabelSeen label;
    private readonly bool negative;
    private readonly double net;
    private readonly HiddenCurve curve;
    private readonly HiddenFailure failure;
    private readonly HiddenClouds clouds;
    private readonly HiddenChemistry chemistry;
    private readonly double[] skyBias;
    private readonly double paperZero;
    private readonly double meterBias;
    private readonly double holeBias;
    private readonly double flashBias;
    private readonly double sheetScatter;
    private readonly double readingScatter;
    private readonly double judgingScatter;
    private readonly double badJudgement;
    private readonly double frameMiss;
    private readonly double motionMiss;
    private readonly double stay;
    private readonly int[] skies;
    private int number;
    private int sky;
    private double skyState;
    private HiddenTone[] tones = [];
    private double cardStops;

    public HiddenWorld(long seed, WorldFamily family)
    {
        this.seed = seed;
        var chance = new Chance(seed, 1);
        var held = family == WorldFamily.HeldOut;
        negative = chance.Happens(0.5);
        var min = chance.Between(0.05, 0.10);
        net = chance.Between(1.75, 2.05);
        label = new LabelSeen
        {
            Kind = negative ? "negative" : "directPositive",
            ExposureIndex = Math.Round(chance.Between(3, 8), 1),
            AtSeconds = negative ? 60 : 120,
            IsoRange = Math.Round(negative ? chance.Between(95, 125) : chance.Between(80, 100)),
            DMin = Math.Round(min, 2),
            DMax = Math.Round(min + net, 2),
            FailureExponent = 0.9,
        };
        var curveFamily = held ? CurveFamily.TwoEmulsions : (CurveFamily)chance.Below(4);
        var range = label.IsoRange * Math.Exp(chance.Normal(0.10)) / 30.103;
        var mid = negative ? 0.60 / net : (0.7447 - min) / net;
        curve = HiddenCurve.Of(curveFamily, range, HiddenBand.FirstTone / net, mid, mirrored: !negative);
        failure = HiddenFailure.Draw(held ? FailureFamily.Bent : (FailureFamily)chance.Below(3), chance);
        clouds = new HiddenClouds(held ? CloudFamily.RampWithDips : (CloudFamily)chance.Below(2), chance);
        chemistry = new HiddenChemistry(held ? ChemistryFamily.Refreshed : (ChemistryFamily)chance.Below(3), chance);

        // At its own time in noon light the label is right up to the box's own speed.
        var labelStops = Math.Log2(Math.PI / 4 * MeterK / label.ExposureIndex) - Math.Log2(label.AtSeconds) + failure.StopsOf(label.AtSeconds);
        paperZero = labelStops - chance.Normal(1.0);
        meterBias = chance.Normal(0.5);
        holeBias = chance.Normal(0.15);
        flashBias = chance.Normal(0.3);
        sheetScatter = chance.Between(0.12, 0.32);
        readingScatter = chance.Between(0.08, 0.2);
        judgingScatter = chance.Between(0.12, 0.3);
        badJudgement = chance.Between(0, 0.05);
        frameMiss = chance.Between(0.01, 0.06);
        motionMiss = chance.Between(0.01, 0.05);
        stay = chance.Between(0.6, 0.95);
        skyBias = [.. SkyTruth.All.Select(each => (each.Actinic * chance.Between(0.8, 1.2)) + chance.Normal(0.3))];
        skies = [chance.Below(SkyTruth.All.Count), chance.Below(SkyTruth.All.Count), chance.Below(SkyTruth.All.Count)];
        sky = skies[0];
        Min = min;
    }

    private double Min { get; }

    /// <inheritdoc/>
    public SheetLine Next()
    {
        number++;
        var chance = new Chance(seed, 2, number);
        if (!chance.Happens(stay))
        {
            sky = skies[chance.Below(skies.Length)];
        }

        var truth = SkyTruth.All[sky];
        skyState = clouds.Meet(truth.Restless, chance);
        var mid = truth.MidStops + skyState + chance.Normal(0.4);
        var kept = chance.Below(4);
        var scene = new List<HiddenTone>();
        if (kept is 1 or 3)
        {
            scene.Add(Tone("shadow", "openShadow", mid, chance.Between(0.6, 1.15), chance));
        }

        if (kept is 0 or 2 or 3)
        {
            scene.Add(Tone("middle", "mid", mid, 0, chance));
        }

        if (kept is 1 or 2 or 3)
        {
            scene.Add(Tone("light", "texturedHighlight", mid, chance.Between(0.6, 1.15), chance));
        }

        if (chance.Happens(0.5))
        {
            scene.Add(new HiddenTone("sky", "mayBurn", null, mid + chance.Between(1, 3), chance.Normal(readingScatter)));
        }

        tones = [.. scene];
        cardStops = mid + Math.Log2(0.85 / 0.18);
        return new SheetLine
        {
            Number = number,
            Sky = clouds.Seen(truth, skyState),
            FNumber = FNumber,
            Label = label,
            Tones = [.. tones.Select(tone => new ToneSeen
            {
                Name = tone.Name,
                Rendering = tone.Rendering,
                Ev = Reading(tone.LuminanceStops + meterBias + tone.ReadingError),
            })],
            CardEv = Reading(cardStops + meterBias + chance.Normal(readingScatter)),
            SheetsInBottle = chemistry.SheetsBefore(number),
        };
    }

    /// <inheritdoc/>
    public JudgedLine Expose(ExposeLine done)
    {
        var chance = new Chance(seed, 3, number);
        var scatter = Draw(chance);
        var landed = Land(
            Stops(0, done.Seconds) + scatter.Light(done.Seconds) + scatter.Sheet,
            done.FlashSeconds > 0 ? Stops(cardStops, done.FlashSeconds) + flashBias + scatter.Flash + scatter.Sheet : double.NegativeInfinity,
            readings: null);
        var seen = new List<ToneJudged>();
        var kept = true;
        for (var i = 0; i < tones.Length; i++)
        {
            if (tones[i].Band is not { } band)
            {
                continue;
            }

            kept &= Kept(landed[i], band);
            seen.Add(Judge(tones[i].Name, landed[i], band, chance));
        }

        var causes = new List<string>();
        if (Math.Abs(scatter.Light(done.Seconds)) > 0.7)
        {
            causes.Add("light");
        }

        if (chance.Happens(frameMiss))
        {
            kept = false;
            causes.Add("frame");
        }

        if (chance.Happens(motionMiss))
        {
            kept = false;
            causes.Add("motion");
        }

        return new JudgedLine { Keeper = kept, Tones = seen, Causes = causes };
    }

    /// <summary>
    /// The exposure that keeps most sheets like this one, for one who knows all of the world and nothing of the sheet's own scatter: reading errors, course
    /// of the light, scatter of sheet and flash are averaged over.
    /// </summary>
    /// <param name="draws">Sheets to average over.</param>
    public ExposeLine Oracle(int draws = 64)
    {
        var chance = new Chance(seed, 4, number);
        var cases = Enumerable.Range(0, draws)
            .Select(_ => (Scatter: Draw(chance), Readings: tones.Select(_ => chance.Normal(readingScatter)).ToArray()))
            .ToArray();
        var (best, count) = (new ExposeLine { Seconds = 60 }, -1.0);
        var flashes = FlashFractions.Select(fraction => fraction == 0 ? 0 : FlashFor(fraction)).ToArray();
        for (var stops = -3.0; stops <= 14; stops += 0.5)
        {
            Try(stops);
        }

        var middle = Math.Log2(best.Seconds);
        for (var stops = middle - 0.4; stops <= middle + 0.41; stops += 0.1)
        {
            Try(stops);
        }

        return best;

        void Try(double stops)
        {
            var seconds = Math.Pow(2, stops);
            var lights = Array.ConvertAll(cases, each => each.Scatter.Light(seconds));
            var worth = Stops(0, seconds);
            foreach (var flashSeconds in flashes)
            {
                var flash = flashSeconds > 0 ? Stops(cardStops, flashSeconds) + flashBias : double.NegativeInfinity;
                var (sum, kept) = (0.0, 0);
                for (var i = 0; i < cases.Length; i++)
                {
                    var (scatter, readings) = cases[i];
                    var (isKept, soft) = KeptSoftly(Land(worth + lights[i] + scatter.Sheet, flash + scatter.Flash + scatter.Sheet, readings));

                    // The soft part draws towards the middle of the bands where no sheet or every sheet is kept.
                    kept += isKept ? 1 : 0;
                    sum += (isKept ? 1 : 0) + (0.01 * soft);
                }

                if (sum > count + 1e-9)
                {
                    count = sum;
                    best = new ExposeLine { Seconds = seconds, FlashSeconds = flashSeconds, Odds = kept / (double)cases.Length * (1 - frameMiss) * (1 - motionMiss) };
                }
            }
        }
    }

    private static double Reading(double stops) => Math.Round(stops + Math.Log2(100 / MeterK), 1);

    private (bool Kept, double Soft) KeptSoftly((double Total, double Flash)[] landed)
    {
        var soft = 0.0;
        var kept = true;
        for (var i = 0; i < tones.Length; i++)
        {
            if (tones[i].Band is { } band)
            {
                kept &= Kept(landed[i], band);
                soft += 1 / (1 + Math.Abs(landed[i].Total - band.Aim));
            }
        }

        return (kept, soft);
    }

    private HiddenTone Tone(string name, string rendering, double mid, double apart, Chance chance)
    {
        // Scenes are chosen by what the label promises to hold, whatever the box then does.
        var promised = HiddenCurve.Of(CurveFamily.Probit, label.IsoRange / 30.103, HiddenBand.FirstTone / net, negative ? 0.60 / net : (0.7447 - Min) / net, !negative);
        var wanted = HiddenBand.Of(promised, rendering, negative, Min, net)!.Value.Aim;
        return new HiddenTone(
            name, rendering, HiddenBand.Of(curve, rendering, negative, Min, net), mid + (apart * wanted), chance.Normal(readingScatter));
    }

    private HiddenScatter Draw(Chance chance)
    {
        var path = (long)(chance.Even() * (1L << 52));
        var sheet = chance.Normal(sheetScatter * (chance.Happens(0.03) ? 3 : 1));
        var flash = chance.Normal(0.12);
        var (state, restless) = (skyState, SkyTruth.All[sky].Restless);
        return new HiddenScatter(seconds => clouds.After(state, restless, seconds, new Chance(path)), sheet, flash);
    }

    private double FlashFor(double fraction)
    {
        // Fraction of the first visible tone, by bisection on the time.
        var threshold = curve.StopsFor(negative ? HiddenBand.FirstTone / net : 1 - (HiddenBand.FirstTone / net)) + Math.Log2(fraction);
        var (low, high) = (-12.0, 13.0);
        for (var i = 0; i < 40; i++)
        {
            var at = (low + high) / 2;
            (low, high) = Stops(cardStops, Math.Pow(2, at)) + flashBias < threshold ? (at, high) : (low, at);
        }

        return Math.Pow(2, low);
    }

    private double Stops(double luminanceStops, double seconds)
        => luminanceStops + Math.Log2(Math.PI / (4 * FNumber * FNumber)) + holeBias + skyBias[sky] - chemistry.LossAfter(chemistry.SheetsBefore(number))
            + failure.StopsOf(seconds) - paperZero;

    /// <summary>Where each tone lands, and what the flash alone does there (stops, and lux seconds' worth), from what an image of one cd/m² and the flash are worth.</summary>
    private (double Total, double Flash)[] Land(double imageStops, double flashStops, double[]? readings)
    {
        var flash = Math.Pow(2, flashStops);
        var landed = new (double, double)[tones.Length];
        for (var i = 0; i < tones.Length; i++)
        {
            // The oracle sees the reading less the meter's bias; the tone itself lies somewhere about it.
            var luminance = tones[i].LuminanceStops + (readings is null ? 0 : tones[i].ReadingError - readings[i]);
            landed[i] = (Math.Log2(Math.Pow(2, luminance + imageStops) + flash), flash);
        }

        return landed;
    }

    private bool Kept((double Total, double Flash) landed, HiddenBand band)
        => landed.Total >= band.Low && landed.Total <= band.High && IsSeen(landed);

    private bool IsSeen((double Total, double Flash) landed)
        => landed.Flash <= 0 || Math.Abs(curve.ShareAt(landed.Total) - curve.ShareAt(Math.Log2(landed.Flash))) * net >= HiddenBand.FirstTone;

    private ToneJudged Judge(string name, (double Total, double Flash) landed, HiddenBand band, Chance chance)
    {
        var off = landed.Total - band.Aim;
        var byEye = Math.Round((off + chance.Normal(judgingScatter)) * 2) / 2;
        if (chance.Happens(badJudgement))
        {
            byEye = Math.Round((off + chance.Normal(2)) * 2) / 2;
        }

        var share = curve.ShareAt(landed.Total);
        var (burnt, blocked) = negative
            ? (share > 0.92, share * net < HiddenBand.FirstTone || !IsSeen(landed))
            : (share * net < HiddenBand.FirstTone, (1 - share) * net < HiddenBand.FirstTone || !IsSeen(landed));
        return new ToneJudged
        {
            Name = name,
            LighterByStops = burnt ? Math.Max(0.5, Math.Min(byEye, 1)) : blocked ? Math.Min(-0.5, Math.Max(byEye, -1)) : Math.Clamp(byEye, -6, 6),
            Lost = burnt ? "burnt" : blocked ? "blocked" : null,
        };
    }
}
