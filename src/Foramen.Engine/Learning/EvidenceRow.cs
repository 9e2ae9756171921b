namespace Foramen.Engine.Learning;

/// <summary>One piece of evidence brought to numbers: which beliefs bear on it, how strongly, and its part of the sum that the fit makes.</summary>
internal sealed class EvidenceRow
{
    private readonly int common;
    private readonly double[] loads;
    private readonly int[] endOf;
    private readonly int flash = -1;
    private double shiftVariance;

    public EvidenceRow(Evidence evidence, IReadOnlyDictionary<BeliefKey, int> places, double worth)
    {
        Evidence = evidence;
        Worth = worth;
        var active = new List<(int Place, double Load)>();
        foreach (var (key, load) in Bearing.OnSheet(evidence.Conditions(), evidence.Doublings))
        {
            active.Add((places[key], load));
        }

        common = active.Count;
        endOf = new int[evidence.Tones.Count];
        for (var i = 0; i < endOf.Length; i++)
        {
            endOf[i] = -1;
            if (Bearing.OnTone(evidence.Box, evidence.Tones[i].Rendering) is { } key)
            {
                endOf[i] = Local(active, places[key]);
            }
        }

        if (evidence.Tones.Any(tone => tone.FlashShare > 0))
        {
            flash = Local(active, places[new BeliefKey(BeliefKind.Flash, "")]);
        }

        Places = [.. active.Select(one => one.Place)];
        loads = [.. active.Select(one => one.Load)];
        Information = new double[Places.Length * Places.Length];
        Gradient = new double[Places.Length];
    }

    public Evidence Evidence { get; }

    /// <summary>How far it still counts for its age, 0 to 1.</summary>
    public double Worth { get; }

    /// <summary>The beliefs that bear on it, by their places in the state.</summary>
    public int[] Places { get; }

    /// <summary>Its part of the information matrix, row by row, at the last state it was asked for.</summary>
    public double[] Information { get; }

    /// <summary>Its part of the gradient, at that state.</summary>
    public double[] Gradient { get; }

    /// <summary>How far it was believed as a whole, 0 to 1.</summary>
    public double Trust { get; private set; } = 1;

    /// <summary>What the sheet as a whole was off by scatter, stops.</summary>
    public double Shift { get; private set; }

    /// <summary>Sums for the scatter's scale: squares over variance, and how many.</summary>
    public (double Squares, double Count) ScatterSums { get; private set; }

    /// <summary>Sums for the readings' scale.</summary>
    public (double Squares, double Count) ReadingSums { get; private set; }

    /// <summary>Where a tone landed from its aim, in stops, by what was expected, what the whole sheet did and what was seen of it; and how sure that is.</summary>
    public (double Stops, double Spread) Landed(int tone, double[] state)
    {
        var seen = Evidence.Tones[tone];
        Span<double> slope = stackalloc double[Places.Length];
        var expected = seen.Foretold.Value + Shift + Slopes(slope, tone, state);
        for (var i = 0; i < common; i++)
        {
            expected += loads[i] * state[Places[i]];
        }

        var judging = seen.Judging.Value * seen.Judging.Value;
        var own = Math.Max(0.01, (seen.Spread.Value * seen.Spread.Value) - judging);
        return (expected + (own / (own + judging) * (seen.Seen.Value - expected)), Math.Sqrt((own * judging / (own + judging)) + shiftVariance));
    }

    /// <summary>Takes in the state: weights, gradient, information, with the sheet's own scatter integrated out.</summary>
    /// <param name="state">What is believed.</param>
    /// <param name="covariance">Its covariance, as far as it is known already.</param>
    /// <param name="scatterScale">Scale of the scatter's variance.</param>
    /// <param name="readingScale">Scale of the readings' variance.</param>
    public void Weigh(double[] state, double[,] covariance, double scatterScale, double readingScale)
    {
        var size = Places.Length;
        var tones = Evidence.Tones;
        Array.Clear(Information);
        Array.Clear(Gradient);
        Span<double> slope = stackalloc double[size];
        Span<double> sumSlope = stackalloc double[size];
        sumSlope.Clear();
        var sheet = 0.0;
        var known = 0.0;
        for (var i = 0; i < common; i++)
        {
            sheet += loads[i] * state[Places[i]];
            for (var j = 0; j < common; j++)
            {
                known += loads[i] * loads[j] * covariance[Places[i], Places[j]];
            }
        }

        var scatter = Evidence.Scatter.Value * Evidence.Scatter.Value * scatterScale;
        var tight = shiftVariance > 0 ? shiftVariance : scatter;
        var own = RobustWeight.OfSquare(((Shift * Shift) + tight) / scatter) / scatter;
        var (sumInformation, sumResidual, trust) = (0.0, 0.0, 0.0);
        var (squares, count) = (0.0, 0.0);
        for (var t = 0; t < tones.Count; t++)
        {
            var tone = tones[t];
            var expected = tone.Foretold.Value + sheet + Slopes(slope, t, state);
            var variance = tone.Spread.Value * tone.Spread.Value * readingScale;
            var (residual, information, believed) = tone.Limit == ObservedLimit.Exact
                ? Exact(tone.Seen.Value - expected, variance, tight + (known * 0.25))
                : Bound(tone, expected, variance);
            trust += believed;
            if (tone.Limit == ObservedLimit.Exact)
            {
                var off = tone.Seen.Value - expected - Shift;
                squares += believed * ((off * off) + tight) / (tone.Spread.Value * tone.Spread.Value);
                count++;
            }

            sumInformation += information;
            sumResidual += information * residual;
            for (var i = 0; i < size; i++)
            {
                var weighted = information * slope[i];
                sumSlope[i] += weighted;
                Gradient[i] += weighted * residual;
                for (var j = 0; j <= i; j++)
                {
                    Information[(i * size) + j] += weighted * slope[j];
                }
            }
        }

        var total = own + sumInformation;
        for (var i = 0; i < size; i++)
        {
            Gradient[i] = Worth * (Gradient[i] - (sumSlope[i] * sumResidual / total));
            for (var j = 0; j <= i; j++)
            {
                Information[(i * size) + j] = Information[(j * size) + i] = Worth * (Information[(i * size) + j] - (sumSlope[i] * sumSlope[j] / total));
            }
        }

        Shift = sumResidual / total;
        shiftVariance = 1 / total;
        var part = sumInformation / total;
        var spread = shiftVariance + (part * part * known);
        Trust = tones.Count == 0 ? 0 : Math.Min(1, own * scatter) * Math.Min(1, trust / tones.Count);
        ScatterSums = (Worth * own * scatter * ((Shift * Shift) + spread) / (scatter / scatterScale), Worth);
        ReadingSums = (Worth * squares, Worth * count);
    }

    private static int Local(List<(int Place, double Load)> active, int place)
    {
        var known = active.FindIndex(one => one.Place == place);
        if (known >= 0)
        {
            return known;
        }

        active.Add((place, 0));
        return active.Count - 1;
    }

    private double Slopes(Span<double> slope, int tone, double[] state)
    {
        slope.Clear();
        for (var i = 0; i < common; i++)
        {
            slope[i] = loads[i];
        }

        var more = 0.0;
        if (endOf[tone] >= 0)
        {
            slope[endOf[tone]] += 1;
            more += state[Places[endOf[tone]]];
        }

        var share = Evidence.Tones[tone].FlashShare;
        if (share > 0)
        {
            var flashed = share * Math.Pow(2, state[Places[flash]]);
            slope[flash] = flashed / (1 - share + flashed);
            more += Math.Log2(1 - share + flashed);
        }

        return more;
    }

    private (double Residual, double Information, double Believed) Exact(double residual, double variance, double around)
    {
        var off = residual - Shift;
        var weight = RobustWeight.OfSquare(((off * off) + around) / variance);
        return (residual, weight / variance, Math.Min(1, weight));
    }

    private (double Residual, double Information, double Believed) Bound(ToneEvidence tone, double expected, double variance)
    {
        var spread = Math.Sqrt(variance);
        var sign = tone.Limit == ObservedLimit.AtLeast ? 1 : -1;
        var inside = sign * (expected + Shift - tone.Seen.Value) / spread;
        var (step, information, believed) = RobustWeight.OfBound(inside);
        return (Shift + (sign * spread * step), information / variance, believed);
    }
}
