using Foramen.Engine.Learning;
using MathNet.Numerics.LinearAlgebra;

namespace Foramen.Engine.Tests.Learning;

/// <summary>
/// The posterior of a whole record by plain matrices: the scatter of each sheet is one more unknown beside the beliefs, all in one vector, solved by MathNet
/// again and again until nothing moves. Slow, and nothing is integrated out.
/// </summary>
internal sealed class PlainPosterior
{
    private readonly Evidence[] sheets;
    private readonly double[] worth;
    private readonly double[] priorMeans;
    private readonly double[] priorSpreads;
    private readonly double[] left;

    public PlainPosterior(Evidence[] sheets, BeliefKey[] keys, double[] priorMeans, double[] priorSpreads, DateTimeOffset asOf, PriorBeliefs prior)
    {
        (this.sheets, Keys, this.priorMeans, this.priorSpreads) = (sheets, keys, priorMeans, priorSpreads);

        // Half for each half-life; what is from later counts fully.
        worth = [.. sheets.Select(sheet => Math.Min(1, Math.Pow(2, -(asOf - sheet.At).TotalDays / prior.HalfLifeDays)))];
        State = Vector<double>.Build.Dense(priorMeans);
        Covariance = Matrix<double>.Build.DenseOfDiagonalArray([.. priorSpreads.Select(spread => spread * spread)]);
        Shifts = Vector<double>.Build.Dense(sheets.Length);
        left = [.. sheets.Select(sheet => sheet.Scatter.Value * sheet.Scatter.Value)];
        for (var round = 0; round < 400; round++)
        {
            Settle(prior.ScatterWorth);
        }
    }

    public BeliefKey[] Keys { get; }

    public Vector<double> State { get; private set; }

    public Matrix<double> Covariance { get; private set; }

    /// <summary>What each sheet as a whole was off by scatter.</summary>
    public Vector<double> Shifts { get; private set; }

    public double ScatterScale { get; private set; } = 1;

    public double ReadingScale { get; private set; } = 1;

    /// <summary>The state with one sheet out of the equations and everything else, weights too, as it was found.</summary>
    public Vector<double> StateWithout(int sheet)
    {
        var (information, gradient, _) = Equations();
        var place = Keys.Length + sheet;
        foreach (var (slopes, pull, told) in Readings(sheet))
        {
            information -= worth[sheet] * told * slopes.OuterProduct(slopes);
            gradient -= worth[sheet] * pull * slopes;
        }

        // Its own scatter stands alone now; what it pulls towards moves no belief.
        gradient[place] = 0;
        return State + (information.Inverse() * gradient).SubVector(0, Keys.Length);
    }

    private void Settle(double scatterWorth)
    {
        var (information, gradient, own) = Equations();
        var inverse = information.Inverse();
        var move = inverse * gradient;
        var (scatter, scatterCount) = (scatterWorth, scatterWorth);
        var (reading, readingCount) = (2 * scatterWorth, 2 * scatterWorth);
        for (var i = 0; i < sheets.Length; i++)
        {
            var sheet = sheets[i];
            var told = Readings(i).Sum(one => one.Told);
            var label = sheet.Scatter.Value * sheet.Scatter.Value;
            foreach (var tone in sheet.Tones.Where(tone => tone.Limit == ObservedLimit.Exact))
            {
                var variance = tone.Spread.Value * tone.Spread.Value;
                var off = tone.Seen.Value - PlainModel.Expected(sheet, tone, Keys, State) - Shifts[i];
                var believed = Math.Min(1, Observe(i, tone).Information * variance * ReadingScale);
                reading += worth[i] * believed * ((off * off) + left[i]) / variance;
                readingCount += worth[i];
            }

            left[i] = 1 / (own[i] + told);
            var part = told / (own[i] + told);
            var shift = Shifts[i] + move[Keys.Length + i];
            scatter += worth[i] * own[i] * ScatterScale * ((shift * shift) + left[i] + (part * part * Known(i)));
            scatterCount += worth[i];
        }

        State += move.SubVector(0, Keys.Length);
        Shifts += move.SubVector(Keys.Length, sheets.Length);
        Covariance = inverse.SubMatrix(0, Keys.Length, 0, Keys.Length);
        (ScatterScale, ReadingScale) = (scatter / scatterCount, reading / readingCount);
    }

    private (Matrix<double> Information, Vector<double> Gradient, double[] Own) Equations()
    {
        var size = Keys.Length + sheets.Length;
        var information = Matrix<double>.Build.Dense(size, size);
        var gradient = Vector<double>.Build.Dense(size);
        for (var i = 0; i < Keys.Length; i++)
        {
            information[i, i] = 1 / (priorSpreads[i] * priorSpreads[i]);
            gradient[i] = (priorMeans[i] - State[i]) * information[i, i];
        }

        var own = new double[sheets.Length];
        for (var i = 0; i < sheets.Length; i++)
        {
            // Scatter has Student's t errors too.
            var scatter = ScatterScale * sheets[i].Scatter.Value * sheets[i].Scatter.Value;
            own[i] = 5 / (4 + (((Shifts[i] * Shifts[i]) + left[i]) / scatter)) / scatter;
            information[Keys.Length + i, Keys.Length + i] += worth[i] * own[i];
            gradient[Keys.Length + i] -= worth[i] * own[i] * Shifts[i];
            foreach (var (slopes, pull, told) in Readings(i))
            {
                information += worth[i] * told * slopes.OuterProduct(slopes);
                gradient += worth[i] * pull * slopes;
            }
        }

        return (information, gradient, own);
    }

    private List<(Vector<double> Slopes, double Pull, double Told)> Readings(int i) => [.. sheets[i].Tones.Select(tone =>
    {
        var slopes = Vector<double>.Build.Dense(Keys.Length + sheets.Length);
        slopes.SetSubVector(0, Keys.Length, PlainModel.Slopes(at => PlainModel.Expected(sheets[i], tone, Keys, at), State));
        slopes[Keys.Length + i] = 1;
        var (pull, told, _) = Observe(i, tone);
        return (slopes, pull, told);
    })];

    private (double Pull, double Information, double Believed) Observe(int i, ToneEvidence tone) => PlainModel.Observe(
        tone,
        PlainModel.Expected(sheets[i], tone, Keys, State) + Shifts[i],
        ReadingScale * tone.Spread.Value * tone.Spread.Value,
        left[i] + (Known(i) / 4));

    // How unsure the beliefs leave the sheet as a whole.
    private double Known(int i)
    {
        var slopes = PlainModel.Slopes(at => PlainModel.Common(sheets[i], Keys, at), State);
        return slopes * Covariance * slopes;
    }
}
