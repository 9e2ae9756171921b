using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>
/// What a record of judged sheets, scans and strips says of paper, camera, meter, light, developer and flash: one normal distribution over all of them,
/// by Laplace's approximation (see <see cref="LaplaceFit"/>), with the scales of scatter and of readings. A function of the set of evidence alone:
/// the order in which it arrives does not matter, and the same entry counts once. Immutable.
/// </summary>
/// <remarks>
/// Limits: what acts only as a sum (speed and meter, say) is known only as a sum; each keeps its own spread and the prediction knows their
/// correlation. Effects that are not among the beliefs (a drift within a day) go into the scatter.
/// </remarks>
public sealed class Beliefs
{
    private readonly LaplaceFit fit;
    private readonly Dictionary<BeliefKey, int> places;
    private readonly Evidence[] evidence;
    private readonly DateTimeOffset asOf;

    private Beliefs(Evidence[] evidence, DateTimeOffset asOf, PriorBeliefs prior)
    {
        this.evidence = evidence;
        this.asOf = asOf;
        Prior = prior;
        fit = LaplaceFit.Of(evidence, asOf, prior);
        Tolerance = ToleranceBelief.From(fit);
        places = fit.Keys.Index().ToDictionary(pair => pair.Item, pair => pair.Index);
    }

    /// <summary>What was believed before any evidence.</summary>
    public PriorBeliefs Prior { get; }

    /// <summary>The evidence, each entry once, in the order of the ids.</summary>
    public IReadOnlyCollection<Evidence> Evidence => evidence;

    /// <summary>All beliefs that the evidence bears on.</summary>
    public IReadOnlyList<Belief> All => [.. fit.Keys.Select(Of)];

    /// <summary>Scatter from sheet to sheet over what was assumed; 1 where nothing was learned.</summary>
    public double ScatterFactor => Math.Sqrt(fit.ScatterScale);

    /// <summary>Spread of readings and judgements over what was assumed.</summary>
    public double ReadingFactor => Math.Sqrt(fit.ReadingScale);

    /// <summary>How far off the user keeps a sheet, against the bands that define a keeper.</summary>
    public ToleranceBelief Tolerance { get; }

    /// <summary>The beliefs after this evidence.</summary>
    /// <param name="evidence">In any order; of several with the same id the last one counts.</param>
    /// <param name="asOf">The instant to which older evidence is aged; evidence from later counts fully.</param>
    /// <param name="prior">What to believe without evidence.</param>
    /// <exception cref="RefusalException">A number in the evidence is out of its range.</exception>
    public static Beliefs From(IEnumerable<Evidence> evidence, DateTimeOffset asOf, PriorBeliefs? prior = null)
    {
        var distinct = new Dictionary<string, Evidence>(StringComparer.Ordinal);
        foreach (var one in evidence)
        {
            one.Check();
            distinct[one.Id] = one;
        }

        Evidence[] ordered = [.. distinct.Values];
        Array.Sort(ordered, static (one, other) => string.CompareOrdinal(one.Id, other.Id));
        return new Beliefs(ordered, asOf, prior ?? PriorBeliefs.Usual);
    }

    /// <summary>These beliefs without some entries, to see what those changed.</summary>
    public Beliefs Without(params IReadOnlyCollection<string> ids)
        => evidence.Any(one => ids.Contains(one.Id)) ? new Beliefs([.. evidence.Where(one => !ids.Contains(one.Id))], asOf, Prior) : this;

    /// <summary>The belief of one thing; as assumed where no evidence bears on it.</summary>
    public Belief Of(BeliefKey key)
    {
        if (!places.TryGetValue(key, out var place))
        {
            return new Belief(key, Prior.MeanOf(key.Kind), Prior.Of(key.Kind), Prior.Of(key.Kind), Prior.MeanOf(key.Kind));
        }

        return new Belief(
            key,
            Stops.FromValue(fit.State[place]),
            Stops.FromValue(Math.Sqrt(Math.Max(0, fit.Covariance[place, place]))),
            Stops.FromValue(fit.PriorSpreads[place]),
            Stops.FromValue(fit.PriorMeans[place]));
    }

    /// <summary>How much lighter than by label a sheet is expected, and how sure that is without its own scatter.</summary>
    /// <param name="conditions">What bears on the sheet.</param>
    /// <param name="doublings">Doublings from the time the label's speed was found at.</param>
    public (Stops Mean, Stops Spread) Expect(SheetConditions conditions, double doublings)
    {
        var loads = Bearing.OnSheet(conditions, doublings).ToList();
        var (mean, variance) = (0.0, 0.0);
        foreach (var (key, load) in loads)
        {
            mean += load * Mean(key);
            foreach (var (other, otherLoad) in loads)
            {
                variance += load * otherLoad * Covariance(key, other);
            }
        }

        return (Stops.FromValue(mean), Stops.FromValue(Math.Sqrt(Math.Max(0, variance))));
    }

    /// <summary>The entries that moved this expectation most, largest first.</summary>
    /// <param name="conditions">What bears on the sheet.</param>
    /// <param name="doublings">Doublings from the time the label's speed was found at.</param>
    /// <param name="most">How many to name.</param>
    public IReadOnlyList<Influence> Why(SheetConditions conditions, double doublings, int most = 5)
    {
        var loads = new double[fit.Keys.Length];
        var expected = 0.0;
        foreach (var (key, load) in Bearing.OnSheet(conditions, doublings))
        {
            if (places.TryGetValue(key, out var place))
            {
                loads[place] += load;
                expected += load * fit.State[place];
            }
        }

        // The first-order pull of every row is cheap; only the strongest are left out in earnest.
        var direction = new double[loads.Length];
        for (var i = 0; i < loads.Length; i++)
        {
            for (var j = 0; j < loads.Length; j++)
            {
                direction[i] += fit.Covariance[i, j] * loads[j];
            }
        }

        return [.. fit.Rows
            .Select(row => (Row: row, Pull: Math.Abs(row.Pull(direction))))
            .OrderByDescending(pair => pair.Pull)
            .Take(2 * most)
            .Select(pair => new Influence(pair.Row.Evidence, Stops.FromValue(expected - fit.Without(pair.Row, loads)), pair.Row.Trust))
            .OrderByDescending(influence => Math.Abs(influence.Moved.Value))
            .Take(most)];
    }

    /// <summary>A scene as it should be planned with what was learned.</summary>
    public LearnedPlan Plan(PlanBasis basis) => Learned.Plan(this, basis);

    /// <summary>Whether any evidence bears on it.</summary>
    internal bool Bears(BeliefKey key) => places.ContainsKey(key);

    internal double Mean(BeliefKey key) => places.TryGetValue(key, out var place) ? fit.State[place] : Prior.MeanOf(key.Kind).Value;

    internal double Covariance(BeliefKey first, BeliefKey second)
    {
        if (places.TryGetValue(first, out var i) && places.TryGetValue(second, out var j))
        {
            return fit.Covariance[i, j];
        }

        var spread = Prior.Of(first.Kind).Value;
        return first == second ? spread * spread : 0;
    }
}
