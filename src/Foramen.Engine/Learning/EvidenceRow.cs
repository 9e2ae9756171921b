namespace Foramen.Engine.Learning;

/// <summary>One piece of evidence brought to numbers: its part of the sum that the fit makes, counted in the few parts of its <see cref="EvidenceGroup"/>.</summary>
internal sealed class EvidenceRow
{
    private const int Parts = EvidenceGroup.Parts;
    private const int Flash = 3;

    private readonly EvidenceGroup group;
    private readonly double doublings;
    private readonly Tone[] tones;
    private readonly double labelScatter;
    private double shiftVariance;

    public EvidenceRow(Evidence evidence, EvidenceGroup group, double worth)
    {
        Evidence = evidence;
        Worth = worth;
        this.group = group;
        doublings = evidence.Doublings;
        tones = [.. evidence.Tones.Select(tone => new Tone(tone, PartOf(Bearing.OnTone(evidence.Box, tone.Rendering))))];
        labelScatter = evidence.Scatter.Value * evidence.Scatter.Value;
    }

    public Evidence Evidence { get; }

    /// <summary>How far it still counts for its age, 0 to 1.</summary>
    public double Worth { get; }

    /// <summary>Its part of the information matrix in the parts of its group, row by row, at the last state it was asked for.</summary>
    public double[] Information { get; } = new double[Parts * Parts];

    /// <summary>Its part of the gradient, at that state.</summary>
    public double[] Gradient { get; } = new double[Parts];

    /// <summary>How far it was believed as a whole, 0 to 1.</summary>
    public double Trust { get; private set; } = 1;

    /// <summary>What the sheet as a whole was off by scatter, stops.</summary>
    public double Shift { get; private set; }

    /// <summary>Sums for the scatter's scale: squares over variance, and how many.</summary>
    public (double Squares, double Count) ScatterSums { get; private set; }

    /// <summary>Sums for the readings' scale.</summary>
    public (double Squares, double Count) ReadingSums { get; private set; }

    /// <summary>
    /// Where a tone landed from its aim, in stops, by what was expected, what the whole sheet did and what was seen of it; and how sure that is. Of the state that the
    /// group has taken in last.
    /// </summary>
    public (double Stops, double Spread) Landed(int tone, double[] state)
    {
        var seen = tones[tone];
        var expected = seen.Foretold + Shift + group.Shift(doublings) + Own(seen, state, out _);
        var own = Math.Max(0.01, seen.Variance - seen.Judging);
        return (expected + (own / (own + seen.Judging) * (seen.Seen - expected)), Math.Sqrt((own * seen.Judging / (own + seen.Judging)) + shiftVariance));
    }

    /// <summary>Takes in the state that its group has taken in: weights, gradient, information, with the sheet's own scatter integrated out.</summary>
    /// <param name="state">What is believed.</param>
    /// <param name="scatterScale">Scale of the scatter's variance.</param>
    /// <param name="readingScale">Scale of the readings' variance.</param>
    public void Weigh(double[] state, double scatterScale, double readingScale)
    {
        var (information, gradient) = (Information, Gradient);
        Array.Clear(information);
        Array.Clear(gradient);
        var sheet = group.Shift(doublings);
        var known = group.Variance(doublings);
        var scatter = labelScatter * scatterScale;
        var tight = shiftVariance > 0 ? shiftVariance : scatter;
        var own = RobustWeight.OfSquare(((Shift * Shift) + tight) / scatter) / scatter;
        var trust = 0.0;
        var (squares, count) = (0.0, 0.0);
        foreach (var tone in tones)
        {
            var expected = tone.Foretold + sheet + Own(tone, state, out var flashSlope);
            var variance = tone.Variance * readingScale;
            var exact = tone.Limit == ObservedLimit.Exact;
            var (residual, told, believed) = exact
                ? Exact(tone.Seen - expected, variance, tight + (known * 0.25))
                : Bound(tone, expected, variance);
            trust += believed;
            if (exact)
            {
                var off = tone.Seen - expected - Shift;
                squares += believed * ((off * off) + tight) / tone.Variance;
                count++;
            }

            // The slope of the sheet as a whole is one, that of a tone's own end too.
            var pull = told * residual;
            information[0] += told;
            gradient[0] += pull;
            if (tone.End > 0)
            {
                information[tone.End] += told;
                information[(tone.End * Parts) + tone.End] += told;
                gradient[tone.End] += pull;
            }

            if (flashSlope > 0)
            {
                information[Flash] += told * flashSlope;
                information[(Flash * Parts) + Flash] += told * flashSlope * flashSlope;
                gradient[Flash] += pull * flashSlope;
                if (tone.End > 0)
                {
                    information[(tone.End * Parts) + Flash] += told * flashSlope;
                }
            }
        }

        var (sumInformation, sumResidual) = (information[0], gradient[0]);
        var total = own + sumInformation;
        // The first row last: it holds what the others are lessened by.
        for (var i = Parts - 1; i >= 0; i--)
        {
            var slope = information[i];
            gradient[i] = Worth * (gradient[i] - (slope * sumResidual / total));
            for (var j = Parts - 1; j >= i; j--)
            {
                information[(i * Parts) + j] = Worth * (information[(i * Parts) + j] - (slope * information[j] / total));
            }
        }

        Shift = sumResidual / total;
        shiftVariance = 1 / total;
        var part = sumInformation / total;
        var spread = shiftVariance + (part * part * known);
        Trust = tones.Length == 0 ? 0 : Math.Min(1, own * scatter) * Math.Min(1, trust / tones.Length);
        ScatterSums = (Worth * own * scatter * ((Shift * Shift) + spread) / labelScatter, Worth);
        ReadingSums = (Worth * squares, Worth * count);
        group.Add(doublings, information, gradient);
    }

    /// <summary>How strongly its gradient pulls along a direction over the state.</summary>
    public double Pull(double[] direction) => group.Along(doublings, Gradient, direction);

    /// <summary>Takes its information and its gradient off those of the whole state.</summary>
    public void TakeOff(Span<double> information, double[] gradient) => group.Take(doublings, Information, Gradient, information, gradient);

    private static int PartOf(BeliefKey? end) => end?.Kind switch
    {
        BeliefKind.ShadowEnd => 1,
        BeliefKind.HighlightEnd => 2,
        _ => 0,
    };

    // What bears on this tone besides the sheet, and the slope of its flash.
    private double Own(in Tone tone, double[] state, out double flashSlope)
    {
        var more = tone.End > 0 ? group.Of(tone.End, state) : 0;
        flashSlope = 0;
        if (tone.FlashShare > 0)
        {
            var flashed = tone.FlashShare * Math.Pow(2, group.Of(Flash, state));
            flashSlope = flashed / (1 - tone.FlashShare + flashed);
            more += Math.Log2(1 - tone.FlashShare + flashed);
        }

        return more;
    }

    private (double Residual, double Information, double Believed) Exact(double residual, double variance, double around)
    {
        var off = residual - Shift;
        var weight = RobustWeight.OfSquare(((off * off) + around) / variance);
        return (residual, weight / variance, Math.Min(1, weight));
    }

    private (double Residual, double Information, double Believed) Bound(in Tone tone, double expected, double variance)
    {
        var spread = Math.Sqrt(variance);
        var sign = tone.Limit == ObservedLimit.AtLeast ? 1 : -1;
        var inside = sign * (expected + Shift - tone.Seen) / spread;
        var (step, information, believed) = RobustWeight.OfBound(inside);
        return (Shift + (sign * spread * step), information / variance, believed);
    }

    /// <summary>A tone as bare numbers: the fit asks for them a hundred thousand times.</summary>
    private readonly struct Tone(ToneEvidence tone, int end)
    {
        public readonly double Foretold = tone.Foretold.Value;
        public readonly double Seen = tone.Seen.Value;
        public readonly double Variance = tone.Spread.Value * tone.Spread.Value;
        public readonly double Judging = tone.Judging.Value * tone.Judging.Value;
        public readonly double FlashShare = tone.FlashShare;
        public readonly ObservedLimit Limit = tone.Limit;
        public readonly int End = end;
    }
}
