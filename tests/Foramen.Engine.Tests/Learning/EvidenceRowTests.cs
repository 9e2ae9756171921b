using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using MathNet.Numerics.LinearAlgebra;
using static Foramen.Engine.Tests.Learning.LearningExamples;

namespace Foramen.Engine.Tests.Learning;

/// <summary>
/// One sheet's part in the fit against the formula it stands for. With the sheet's own scatter of variance s integrated out, readings of variance V with
/// slopes H inform by HᵀC⁻¹H and pull by HᵀC⁻¹r, where C = V + s·11ᵀ; here C is inverted as a matrix.
/// </summary>
public class EvidenceRowTests
{
    private const double ScatterScale = 1.7;
    private const double ReadingScale = 0.8;
    private const double Worth = 0.6;

    private static readonly BeliefKey[] Keys =
    [
        Speed,
        new(BeliefKind.Failure, "box"),
        new(BeliefKind.ShadowEnd, "box"),
        new(BeliefKind.HighlightEnd, "box"),
        new(BeliefKind.Camera, "Box A"),
        PlainModel.Meter,
        new(BeliefKind.Light, "noon"),
        new(BeliefKind.Ageing, "sheets 1 to 5"),
        new(BeliefKind.Ageing, "sheets 6 to 10"),
        PlainModel.Flash,
    ];

    private static readonly double[] State = [0.3, -0.04, 0.15, -0.2, 0.05, 0.1, -0.12, -0.25, -0.4, 0.35];

    // A A' of made-up numbers, so that everything goes with everything.
    private static readonly Matrix<double> Covariance = MakeCovariance();

    private static readonly Dictionary<string, ToneEvidence[]> Tones = new()
    {
        { "a mid-tone", [Tone(0.5, 0.35)] },
        { "both ends of the scale", [Tone(0.2, 0.3), At(Rendering.OpenShadow, -0.6), At(Rendering.TexturedHighlight, 0.9)] },
        { "a flashed mid-tone", [Tone(0.5, 0.35) with { FlashShare = 0.3 }] },
        { "a flashed shadow beside a wall", [Tone(0.2, 0.3), At(Rendering.OpenShadow, -0.6) with { FlashShare = 0.55 }] },
        { "a burnt highlight", [Tone(0.8, 0.4), At(Rendering.TexturedHighlight, 0.4) with { Limit = ObservedLimit.AtLeast }] },
        { "a blocked flashed shadow", [Tone(-0.8, 0.4), At(Rendering.OpenShadow, -0.3) with { Limit = ObservedLimit.AtMost, FlashShare = 0.4 }] },
        { "a far outlier among others", [Tone(0.2, 0.3), At(Rendering.OpenShadow, 4), At(Rendering.TexturedHighlight, 0.1)] },
    };

    public static TheoryData<string> Sheets => [.. Tones.Keys];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_sheet_informs_and_pulls_as_the_matrix_formula_says(string what)
    {
        var sheet = OfTones(Tones[what]);
        var (group, row) = Begin(sheet);
        var (shift, left) = (0.0, double.NaN);
        for (var round = 0; round < 3; round++)
        {
            // Each weighing starts from the shift that the one before left.
            var plain = Plain(sheet, shift, left);
            group.Begin(State, Covariance.ToRowMajorArray());
            row.Weigh(State, ScatterScale, ReadingScale);
            var all = new double[Keys.Length * Keys.Length];
            var slopes = new double[Keys.Length];
            group.Spread(all, slopes);
            Close(plain.Information.ToRowMajorArray(), all, what);
            Close(plain.Gradient.ToArray(), slopes, what);
            Assert.Equal(plain.Shift, row.Shift, 1e-6);
            (shift, left) = (plain.Shift, plain.Left);
        }
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Its_sums_for_the_scales_are_expected_squares_over_variance(string what)
    {
        var sheet = OfTones(Tones[what]);
        var (_, row) = Begin(sheet);
        row.Weigh(State, ScatterScale, ReadingScale);
        var before = Plain(sheet, 0, double.NaN);
        var plain = Plain(sheet, before.Shift, before.Left);
        row.Weigh(State, ScatterScale, ReadingScale);

        Assert.True(Math.Abs(plain.Squares - row.ReadingSums.Squares) < 1e-6, what);
        Assert.Equal(Worth * sheet.Tones.Count(tone => tone.Limit == ObservedLimit.Exact), row.ReadingSums.Count, 1e-12);
        Assert.Equal(plain.ScatterSquares, row.ScatterSums.Squares, 1e-6);
        Assert.Equal(Worth, row.ScatterSums.Count);
        Assert.Equal(plain.Trust, row.Trust, 1e-6);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Its_pull_along_a_direction_is_the_slope_there_and_it_can_be_taken_off_again(string what)
    {
        var sheet = OfTones(Tones[what]);
        var (_, row) = Begin(sheet);
        var plain = Plain(sheet, 0, double.NaN);
        row.Weigh(State, ScatterScale, ReadingScale);
        double[] direction = [0.9, 2.5, -0.3, 0.4, 0.2, -0.6, 0.8, 1.1, -0.7, 0.5];
        Assert.Equal(plain.Gradient.DotProduct(Vector<double>.Build.Dense(direction)), row.Pull(direction), 1e-5);

        var rest = plain.Information.ToRowMajorArray();
        var slopes = plain.Gradient.ToArray();
        row.TakeOff(rest, slopes);
        Close(new double[rest.Length], rest, what);
        Close(new double[slopes.Length], slopes, what);
    }

    // What was seen of a tone errs by the judging, what was expected of it by the tone's own part of the reading: two observations of one landing, whose precisions add.
    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_tone_landed_between_what_was_expected_and_what_was_seen(string what)
    {
        var sheet = OfTones(Tones[what]);
        var (_, row) = Begin(sheet);
        row.Weigh(State, ScatterScale, ReadingScale);
        var plain = Plain(sheet, 0, double.NaN);
        for (var i = 0; i < sheet.Tones.Count; i++)
        {
            var tone = sheet.Tones[i];
            var judging = tone.Judging.Value * tone.Judging.Value;
            var own = (tone.Spread.Value * tone.Spread.Value) - judging;
            var expected = PlainModel.Expected(sheet, tone, Keys, Vector<double>.Build.Dense(State)) + plain.Shift;
            var (landed, spread) = row.Landed(i, State);
            Assert.True(Math.Abs((((expected / own) + (tone.Seen.Value / judging)) / ((1 / own) + (1 / judging))) - landed) < 1e-5, what);
            Assert.Equal(Math.Sqrt((1 / ((1 / own) + (1 / judging))) + plain.Left), spread, 1e-5);
        }
    }

    // Where all of the spread is said to be judging, a tenth of a stop is left for the tone itself.
    [Fact]
    public void A_tone_that_was_read_without_error_still_has_a_tenth_of_a_stop_of_its_own()
    {
        var sheet = OfTones([Tone(1, 0.4) with { Judging = Stops.FromValue(0.4) }]);
        var (_, row) = Begin(sheet);
        row.Weigh(State, ScatterScale, ReadingScale);
        var expected = PlainModel.Expected(sheet, sheet.Tones[0], Keys, Vector<double>.Build.Dense(State)) + row.Shift;
        Assert.Equal(((expected / 0.01) + (1 / 0.16)) / ((1 / 0.01) + (1 / 0.16)), row.Landed(0, State).Stops, 1e-9);
    }

    [Fact]
    public void A_sheet_without_tones_says_nothing()
    {
        var (_, row) = Begin(OfTones([]));
        row.Weigh(State, ScatterScale, ReadingScale);
        Assert.Equal(0, row.Trust);
        Assert.Equal(0, row.Shift);
        Assert.All(row.Information, value => Assert.Equal(0, value));
        Assert.All(row.Gradient, value => Assert.Equal(0, value));
    }

    private static ToneEvidence At(Rendering rendering, double seen) => Tone(seen, 0.4) with { Name = $"{rendering}", Rendering = rendering };

    private static Evidence OfTones(ToneEvidence[] tones) => Sheet("a", 0) with
    {
        Doublings = 2.5,
        SheetsInBottle = 8,
        Scatter = Stops.FromValue(0.4),
        Tones = [.. tones.Select((tone, i) => tone with { Foretold = Stops.FromValue(0.1 - (0.2 * i)) })],
    };

    private static (EvidenceGroup Group, EvidenceRow Row) Begin(Evidence sheet)
    {
        var group = new EvidenceGroup(sheet, Keys.Index().ToDictionary(pair => pair.Item, pair => pair.Index));
        group.Begin(State, Covariance.ToRowMajorArray());
        return (group, new EvidenceRow(sheet, group, Worth));
    }

    private static Matrix<double> MakeCovariance()
    {
        var root = Matrix<double>.Build.Dense(Keys.Length, Keys.Length, (i, j) => i == j ? 0.25 : 0.05 * Math.Sin((3 * i) + (7 * j)));
        return root * root.Transpose();
    }

    private static Sums Plain(Evidence sheet, double shift, double left)
    {
        var state = Vector<double>.Build.Dense(State);
        var label = sheet.Scatter.Value * sheet.Scatter.Value;
        var scatter = ScatterScale * label;
        var unsure = double.IsNaN(left) ? scatter : left;
        var weight = 5 / (4 + (((shift * shift) + unsure) / scatter));
        var slopeOfSheet = PlainModel.Slopes(at => PlainModel.Common(sheet, Keys, at), state);
        var known = slopeOfSheet * Covariance * slopeOfSheet;
        var count = sheet.Tones.Count;
        var slopes = Matrix<double>.Build.DenseOfRows(sheet.Tones.Select(tone => PlainModel.Slopes(at => PlainModel.Expected(sheet, tone, Keys, at), state)));
        var seen = sheet.Tones
            .Select(tone => (Tone: tone, Expected: PlainModel.Expected(sheet, tone, Keys, state)))
            .Select(pair => (pair.Tone, pair.Expected, Said: PlainModel.Observe(
                pair.Tone, pair.Expected + shift, ReadingScale * pair.Tone.Spread.Value * pair.Tone.Spread.Value, unsure + (known / 4))))
            .ToList();

        // A pull p of information w at the shift u is an observation u + p/w with variance 1/w.
        var residual = Vector<double>.Build.Dense(count, i => shift + (seen[i].Said.Pull / seen[i].Said.Information));
        var spread = Matrix<double>.Build.Dense(count, count, (i, j) => (scatter / weight) + (i == j ? 1 / seen[i].Said.Information : 0));
        var inverse = spread.Inverse();
        var ones = Vector<double>.Build.Dense(count, 1);
        var own = scatter / weight;

        // The sheet's shift given its readings, and what is unsure of it: the usual conditional normal; seen from the beliefs it moves by the part of them it takes up.
        var gain = own * (inverse * ones);
        var taken = gain.Sum();
        var stillLeft = own * (1 - taken);
        var found = gain * residual;
        return new Sums(
            Worth * (slopes.Transpose() * inverse * slopes),
            Worth * (slopes.Transpose() * inverse * residual),
            found,
            stillLeft,
            Worth * seen.Where(one => one.Tone.Limit == ObservedLimit.Exact).Sum(one =>
            {
                var off = one.Tone.Seen.Value - one.Expected - shift;
                return one.Said.Believed * ((off * off) + unsure) / (one.Tone.Spread.Value * one.Tone.Spread.Value);
            }),
            Worth * weight * ((found * found) + stillLeft + (taken * taken * known)) / label,
            Math.Min(1, weight) * Math.Min(1, seen.Average(one => one.Said.Believed)));
    }

    private static void Close(double[] expected, double[] actual, string what)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (var i = 0; i < expected.Length; i++)
        {
            Assert.True(Math.Abs(expected[i] - actual[i]) < 2e-5 * (1 + Math.Abs(expected[i])), $"{what}: {actual[i]} instead of {expected[i]} at {i}");
        }
    }

    private sealed record Sums(
        Matrix<double> Information, Vector<double> Gradient, double Shift, double Left, double Squares, double ScatterSquares, double Trust);
}
