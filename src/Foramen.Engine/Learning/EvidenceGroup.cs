namespace Foramen.Engine.Learning;

/// <summary>
/// Pieces of evidence on which the same beliefs bear as strongly, but for the failure with its doublings of time: one box, camera, sky and number of sheets in the
/// bottle. What they add to the fit is gathered here in a few numbers and spread over the state once, not sheet by sheet.
/// </summary>
internal sealed class EvidenceGroup
{
    /// <summary>What a piece of evidence bears on, as the group counts it: the sheet as a whole, the shadow's end, the highlight's end, the flash.</summary>
    public const int Parts = 4;

    // The sheet as a whole stands twice: once as it is, once times its doublings.
    private const int Directions = Parts + 1;

    private readonly int[] common;
    private readonly double[] loads;
    private readonly int failure;
    private readonly int[] own;
    private readonly double[] information = new double[Directions * Directions];
    private readonly double[] gradient = new double[Directions];
    private double mean;
    private double slope;
    private double variance;
    private double mixed;
    private double failureVariance;

    /// <param name="evidence">Any of its pieces.</param>
    /// <param name="places">Where each belief stands in the state.</param>
    public EvidenceGroup(Evidence evidence, IReadOnlyDictionary<BeliefKey, int> places)
    {
        var bearing = Bearing.OnSheet(evidence.Conditions(), evidence.Doublings);
        var rest = bearing.Where(pair => pair.Key.Kind != BeliefKind.Failure).ToList();
        common = [.. rest.Select(pair => places[pair.Key])];
        loads = [.. rest.Select(pair => pair.Load)];
        failure = places[new BeliefKey(BeliefKind.Failure, evidence.Box)];
        own =
        [
            places.GetValueOrDefault(new BeliefKey(BeliefKind.ShadowEnd, evidence.Box), -1),
            places.GetValueOrDefault(new BeliefKey(BeliefKind.HighlightEnd, evidence.Box), -1),
            places.GetValueOrDefault(new BeliefKey(BeliefKind.Flash, ""), -1),
        ];
    }

    /// <summary>What the state says of one of its own parts, from 1.</summary>
    public double Of(int part, double[] state) => state[own[part - 1]];

    /// <summary>Takes in a state and its covariance, and forgets what was gathered.</summary>
    public void Begin(double[] state, ReadOnlySpan<double> covariance)
    {
        var size = state.Length;
        (mean, variance, mixed) = (0, 0, 0);
        for (var i = 0; i < common.Length; i++)
        {
            var row = covariance.Slice(common[i] * size, size);
            mean += loads[i] * state[common[i]];
            mixed += loads[i] * row[failure];
            var sum = 0.0;
            for (var j = 0; j < common.Length; j++)
            {
                sum += loads[j] * row[common[j]];
            }

            variance += loads[i] * sum;
        }

        slope = state[failure];
        failureVariance = covariance[(failure * size) + failure];
        Array.Clear(information);
        Array.Clear(gradient);
    }

    /// <summary>How much lighter than labelled a sheet of so many doublings is believed to come out, stops.</summary>
    public double Shift(double doublings) => mean + (doublings * slope);

    /// <summary>The variance of that.</summary>
    public double Variance(double doublings) => variance + (doublings * ((2 * mixed) + (doublings * failureVariance)));

    /// <summary>Gathers one piece of evidence: its information (<see cref="Parts"/> by itself, both halves) and its gradient.</summary>
    public void Add(double doublings, ReadOnlySpan<double> rowInformation, ReadOnlySpan<double> rowGradient)
        => Add(doublings, rowInformation, rowGradient, information, gradient);

    /// <summary>Spreads what was gathered over the whole state.</summary>
    public void Spread(Span<double> all, double[] slopes) => Spread(information, gradient, all, slopes);

    /// <summary>Takes the information of one piece of evidence, and its gradient, off those of the whole state.</summary>
    public void Take(double doublings, ReadOnlySpan<double> rowInformation, ReadOnlySpan<double> rowGradient, Span<double> all, double[] slopes)
    {
        // Not the group's own sums: this may be asked by several at once.
        var (less, down) = (new double[information.Length], new double[gradient.Length]);
        Add(doublings, rowInformation, rowGradient, less, down);
        Spread(Array.ConvertAll(less, value => -value), Array.ConvertAll(down, value => -value), all, slopes);
    }

    /// <summary>A direction over the whole state in the directions of the group: the sum over its loads, for the whole, the doublings and the parts.</summary>
    public double Along(double doublings, ReadOnlySpan<double> rowGradient, double[] direction)
    {
        var whole = doublings * direction[failure];
        for (var i = 0; i < common.Length; i++)
        {
            whole += loads[i] * direction[common[i]];
        }

        var sum = rowGradient[0] * whole;
        for (var i = 1; i < Parts; i++)
        {
            sum += rowGradient[i] == 0 ? 0 : rowGradient[i] * direction[own[i - 1]];
        }

        return sum;
    }

    // The order of directions: whole, doublings, then the parts of its own.
    private static void Add(double doublings, ReadOnlySpan<double> rowInformation, ReadOnlySpan<double> rowGradient, double[] information, double[] gradient)
    {
        var whole = rowInformation[0];
        information[0] += whole;
        information[1] += doublings * whole;
        information[Directions + 1] += doublings * doublings * whole;
        gradient[0] += rowGradient[0];
        gradient[1] += doublings * rowGradient[0];
        for (var i = 1; i < Parts; i++)
        {
            var shared = rowInformation[i];
            information[i + 1] += shared;
            information[Directions + i + 1] += doublings * shared;
            gradient[i + 1] += rowGradient[i];
            for (var j = i; j < Parts; j++)
            {
                information[((i + 1) * Directions) + j + 1] += rowInformation[(i * Parts) + j];
            }
        }
    }

    private void Spread(double[] information, double[] gradient, Span<double> all, double[] slopes)
    {
        for (var i = 0; i < Directions; i++)
        {
            for (var j = i; j < Directions; j++)
            {
                Put(i, j, information[(i * Directions) + j], all, slopes.Length);
            }

            Put(i, gradient[i], slopes);
        }
    }

    private ReadOnlySpan<int> PlacesOf(int direction) => direction switch
    {
        0 => common,
        1 => new ReadOnlySpan<int>(in failure),
        _ => own.AsSpan(direction - 2, 1),
    };

    private double LoadOf(int direction, int index) => direction == 0 ? loads[index] : 1;

    private void Put(int first, int second, double value, Span<double> all, int size)
    {
        if (value == 0)
        {
            return;
        }

        var rows = PlacesOf(first);
        var columns = PlacesOf(second);
        for (var i = 0; i < rows.Length; i++)
        {
            var loaded = value * LoadOf(first, i);
            for (var j = 0; j < columns.Length; j++)
            {
                var both = loaded * LoadOf(second, j);
                all[(rows[i] * size) + columns[j]] += both;
                if (first != second)
                {
                    all[(columns[j] * size) + rows[i]] += both;
                }
            }
        }
    }

    private void Put(int direction, double value, double[] slopes)
    {
        if (value == 0)
        {
            return;
        }

        var rows = PlacesOf(direction);
        for (var i = 0; i < rows.Length; i++)
        {
            slopes[rows[i]] += value * LoadOf(direction, i);
        }
    }
}
