using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal.Worlds;

/// <summary>
/// An outing with a hidden truth: a box that is not what its label says, a meter and a hole that are off, skies whose colour the paper sees in its own
/// way, developer that tires, sheets that scatter, frames that miss. Its models are not the Engine's: other curves, other failure, clouds that
/// remember. All of it follows from seed and sheet number; what a photographer does changes only the sheet at hand.
/// </summary>
internal sealed class HiddenWorld : IWorld
{
    private static readonly double[] FlashFractions = [0, 0.25, 0.5, 0.8, 1];

    private readonly long seed;
    private int number;
    private int sky;
    private double skyState;
    private HiddenTone[] tones = [];
    private double cardStops;

    public HiddenWorld(long seed, WorldFamily family)
    {
        this.seed = seed;
        var chance = new Chance(seed, 1);
        Truth = WorldTruth.Draw(WorldLabel.Draw(chance), family, chance);
        sky = Truth.Skies[0];
    }

    /// <summary>What nobody in it knows.</summary>
    public WorldTruth Truth { get; }

    /// <inheritdoc/>
    public SheetLine Next()
    {
        number++;
        var chance = new Chance(seed, 2, number);
        if (!chance.Happens(Truth.Stay))
        {
            sky = Truth.Skies[chance.Below(Truth.Skies.Length)];
        }

        var kind = SkyTruth.All[sky];
        skyState = Truth.Clouds.Meet(kind.Restless, chance);
        var mid = kind.MidStops + skyState + chance.Normal(0.4);
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
            scene.Add(new HiddenTone("sky", "mayBurn", null, mid + chance.Between(1, 3), chance.Normal(Truth.ReadingScatter)));
        }

        tones = [.. scene];
        cardStops = mid + Math.Log2(0.85 / 0.18);
        return new SheetLine
        {
            Number = number,
            Sky = Truth.Clouds.Seen(kind, skyState),
            FNumber = WorldTruth.FNumber,
            Label = Truth.Label.Seen,
            Tones = [.. tones.Select(tone => new ToneSeen
            {
                Name = tone.Name,
                Rendering = tone.Rendering,
                Ev = Reading(tone.LuminanceStops + Truth.MeterBias + tone.ReadingError),
            })],
            CardEv = Reading(cardStops + Truth.MeterBias + chance.Normal(Truth.ReadingScatter)),
            SheetsInBottle = Truth.Chemistry.SheetsBefore(number),
        };
    }

    /// <inheritdoc/>
    public JudgedLine Expose(ExposeLine done)
    {
        var chance = new Chance(seed, 3, number);
        var scatter = Draw(chance);
        var landed = Land(
            Stops(0, done.Seconds) + scatter.Light(done.Seconds) + scatter.Sheet,
            done.FlashSeconds > 0 ? Stops(cardStops, done.FlashSeconds) + Truth.FlashBias + scatter.Flash + scatter.Sheet : double.NegativeInfinity,
            readings: null);
        var seen = new List<ToneJudged>();
        var kept = true;
        for (var i = 0; i < tones.Length; i++)
        {
            if (tones[i].Band is not { } band)
            {
                continue;
            }

            kept &= Truth.Kept(landed[i], band);
            seen.Add(Judge(tones[i].Name, landed[i], band, chance));
        }

        var causes = new List<string>();
        if (Math.Abs(scatter.Light(done.Seconds)) > 0.7)
        {
            causes.Add("light");
        }

        if (chance.Happens(Truth.FrameMiss))
        {
            kept = false;
            causes.Add("frame");
        }

        if (chance.Happens(Truth.MotionMiss))
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
            .Select(_ => (Scatter: Draw(chance), Readings: tones.Select(_ => chance.Normal(Truth.ReadingScatter)).ToArray()))
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
                var flash = flashSeconds > 0 ? Stops(cardStops, flashSeconds) + Truth.FlashBias : double.NegativeInfinity;
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
                    best = new ExposeLine { Seconds = seconds, FlashSeconds = flashSeconds, Odds = kept / (double)cases.Length * (1 - Truth.FrameMiss) * (1 - Truth.MotionMiss) };
                }
            }
        }
    }

    private static double Reading(double stops) => Math.Round(stops - WorldTruth.StopsAtEvZero, 1);

    private (bool Kept, double Soft) KeptSoftly(LandedTone[] landed)
    {
        var soft = 0.0;
        var kept = true;
        for (var i = 0; i < tones.Length; i++)
        {
            if (tones[i].Band is { } band)
            {
                kept &= Truth.Kept(landed[i], band);
                soft += 1 / (1 + Math.Abs(landed[i].Total - band.Aim));
            }
        }

        return (kept, soft);
    }

    private HiddenTone Tone(string name, string rendering, double mid, double apart, Chance chance)
    {
        // Scenes are chosen by what the label promises to hold, whatever the box then does.
        var label = Truth.Label;
        var promised = HiddenCurve.Of(CurveFamily.Probit, label.Seen.IsoRange / 30.103, label.FirstTone, label.Middle, !label.IsNegative);
        var wanted = HiddenBand.Of(promised, rendering, label.IsNegative, label.Min, label.Net)!.Value.Aim;
        return new HiddenTone(name, rendering, Truth.BandOf(rendering), mid + (apart * wanted), chance.Normal(Truth.ReadingScatter));
    }

    private HiddenScatter Draw(Chance chance)
    {
        var path = (long)(chance.Even() * (1L << 52));
        var sheet = chance.Normal(Truth.SheetScatter * (chance.Happens(0.03) ? 3 : 1));
        var flash = chance.Normal(0.12);
        var (state, restless) = (skyState, SkyTruth.All[sky].Restless);
        return new HiddenScatter(seconds => Truth.Clouds.After(state, restless, seconds, new Chance(path)), sheet, flash);
    }

    private double FlashFor(double fraction) => Truth.FlashFor(sky, Truth.Chemistry.SheetsBefore(number), cardStops, fraction);

    private double Stops(double luminanceStops, double seconds) => Truth.Stops(sky, Truth.Chemistry.SheetsBefore(number), luminanceStops, seconds);

    /// <summary>Where each tone lands, from what an image of one cd/m² and the flash are worth.</summary>
    private LandedTone[] Land(double imageStops, double flashStops, double[]? readings)
    {
        var flash = Math.Pow(2, flashStops);
        var landed = new LandedTone[tones.Length];
        for (var i = 0; i < tones.Length; i++)
        {
            // The oracle sees the reading less the meter's bias; the tone itself lies somewhere about it.
            var luminance = tones[i].LuminanceStops + (readings is null ? 0 : tones[i].ReadingError - readings[i]);
            landed[i] = LandedTone.Of(luminance + imageStops, flash);
        }

        return landed;
    }

    private ToneJudged Judge(string name, LandedTone landed, HiddenBand band, Chance chance)
    {
        var off = landed.Total - band.Aim;
        var byEye = Math.Round((off + chance.Normal(Truth.JudgingScatter)) * 2) / 2;
        if (chance.Happens(Truth.BadJudgement))
        {
            byEye = Math.Round((off + chance.Normal(2)) * 2) / 2;
        }

        var lost = Truth.Lost(landed);
        return new ToneJudged
        {
            Name = name,
            LighterByStops = lost switch
            {
                "burnt" => Math.Max(0.5, Math.Min(byEye, 1)),
                "blocked" => Math.Min(-0.5, Math.Max(byEye, -1)),
                _ => Math.Clamp(byEye, -6, 6),
            },
            Lost = lost,
        };
    }
}
