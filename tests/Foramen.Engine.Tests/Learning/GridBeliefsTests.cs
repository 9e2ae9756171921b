using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using static Foramen.Engine.Tests.Learning.LearningExamples;

namespace Foramen.Engine.Tests.Learning;

/// <summary>Beliefs that are summed over a few dozen points, against the integrals that they stand for (MathNet's Simpson over two thousand).</summary>
public class GridBeliefsTests
{
    private static readonly (double Margin, bool Cut)[] Frames = [(2, true), (4, false), (6, false), (1, true), (3, false), (-1, true), (8, false), (5, true)];

    private static readonly ForecastOutcome[] Outcomes =
        [.. new[] { 0.3, 0.5, 0.7, 0.9, 0.6, 0.2 }.Select((odds, i) => new ForecastOutcome(Probability.FromFraction(odds), i != 2))];

    [Fact]
    public void The_aiming_error_is_the_posterior_s_mean_by_integration()
    {
        var belief = AimingBelief.From(Frames);
        var (from, to) = (Math.Log(0.3), Math.Log(30));
        double Chance(double margin, double log) => 1 - Normal.CDF(0, Math.Exp(log), margin);
        double Density(double log) => Normal.PDF(Math.Log(3), Math.Log(2), log)
            * Frames.Aggregate(1.0, (so, frame) => so * (frame.Cut ? 0.005 + (0.99 * Chance(frame.Margin, log)) : 0.995 - (0.99 * Chance(frame.Margin, log))));
        double Mean(Func<double, double> of) => Integral(log => of(log) * Density(log), from, to) / Integral(Density, from, to);
        var middle = Mean(log => log);

        // The sum counts the ends of the grid as whole steps; a thousandth of the scale is nothing.
        Assert.Equal(middle, Math.Log(belief.Percent), 1e-3);
        Assert.Equal(Math.Sqrt(Mean(log => (log - middle) * (log - middle))), belief.LogSpread, 1e-3);
        Assert.Equal(Mean(log => Chance(2.5, log)), belief.ChanceOfCut(2.5).Fraction, 1e-3);
        Assert.Equal(belief.Percent * Math.Exp(belief.LogSpread), belief.LikelyPercent.High, 1e-12);
        Assert.Equal(belief.Percent / Math.Exp(belief.LogSpread), belief.LikelyPercent.Low, 1e-12);
    }

    [Fact]
    public void Before_any_frame_it_is_three_percent() => Assert.Equal(3, AimingBelief.From([]).Percent, 1e-9);

    [Fact]
    public void Thousands_of_frames_and_sheets_still_add_up()
    {
        var aiming = AimingBelief.From(Enumerable.Range(0, 4000).Select(i => (5.0, i % 20 == 0)));

        // One in twenty cut at 5 %: 0.005 + 0.99·Q(5/s) = 0.05 gives s = 5/1.691.
        Assert.Equal(5 / -Normal.InvCDF(0, 1, (0.05 - 0.005) / 0.99), aiming.Percent, 0.15);

        // Sixty of a hundred kept that were stated as a half: the shift is ln 1.5.
        var calibration = OddsCalibration.From(Enumerable.Range(0, 4000).Select(i => new ForecastOutcome(Probability.FromFraction(0.5), i % 5 < 3)));
        Assert.Equal(Math.Log(1.5), calibration.Shift, 0.01);
    }

    [Theory]
    [InlineData(-50.5)]
    [InlineData(50.5)]
    public void Margins_that_no_frame_has_are_refused(double margin)
        => Assert.Equal(
            FormattableString.Invariant($"The margin is {margin} %; it should be between -50 and 50 %."),
            Assert.Throws<RefusalException>(() => AimingBelief.From([(margin, false)])).Message);

    [Fact]
    public void The_calibration_is_the_posterior_s_mean_by_integration()
    {
        var calibration = OddsCalibration.From(Outcomes);
        double Chance(double odds, double shift) => 1 / (1 + ((1 - odds) / odds * Math.Exp(-shift)));
        double Density(double shift) => Normal.PDF(0, 0.5, shift)
            * Outcomes.Aggregate(1.0, (so, one) => so * (one.Keeper ? Chance(one.Odds.Fraction, shift) : 1 - Chance(one.Odds.Fraction, shift)));
        double Mean(Func<double, double> of) => Integral(shift => of(shift) * Density(shift), -2, 2) / Integral(Density, -2, 2);
        Assert.Equal(Mean(shift => shift), calibration.Shift, 1e-4);
        foreach (var odds in new[] { 0.1, 0.5, 0.93 })
        {
            Assert.Equal(Mean(shift => Chance(odds, shift)), calibration.Calibrated(Probability.FromFraction(odds)).Fraction, 1e-4);
        }

        Assert.Equal(0, OddsCalibration.From([]).Shift, 1e-12);
    }

    [Fact]
    public void Beliefs_are_equal_where_they_say_the_same()
    {
        Assert.Equal(AimingBelief.From(Frames), AimingBelief.From(Frames));
        Assert.Equal(AimingBelief.From(Frames).GetHashCode(), AimingBelief.From(Frames).GetHashCode());
        Assert.NotEqual(AimingBelief.From(Frames), AimingBelief.From(Frames[1..]));
        Assert.False(AimingBelief.From(Frames).Equals(null));
        Assert.Equal(OddsCalibration.From(Outcomes), OddsCalibration.From(Outcomes));
        Assert.Equal(OddsCalibration.From(Outcomes).GetHashCode(), OddsCalibration.From(Outcomes).GetHashCode());
        Assert.NotEqual(OddsCalibration.From(Outcomes), OddsCalibration.From(Outcomes[1..]));
        Assert.False(OddsCalibration.From(Outcomes).Equals(null));
    }

    // Whether a sheet is kept at a tolerance f: 0.03 + 0.94·P(every tone between f times its edges), by where each tone landed and how sure that is.
    [Fact]
    public void The_tolerance_is_the_posterior_s_mean_by_integration()
    {
        Evidence[] sheets =
        [
            Sheet("a", 0.7) with { Kept = true },
            Sheet("b", 0.2, daysAgo: 365) with { Kept = true },
            Sheet("c", -0.9) with { Kept = false },
            Sheet("d", 0.6) with { Kept = true },

            // These say nothing of it: not judged as a whole, a bound, a band that is not known, no tones.
            Sheet("e", 3),
            Sheet("f", 0.9, limit: ObservedLimit.AtLeast) with { Kept = false },
            Sheet("g", 0.1) with { Kept = false, Tones = [Tone(0.1, 0.3) with { BandLow = null }] },
            Sheet("h", 0.1) with { Kept = false, Tones = [Tone(0.1, 0.3) with { BandHigh = null }] },
            Sheet("i", 0.1) with { Kept = false, Tones = [] },
        ];
        var fit = LaplaceFit.Of(sheets, Now, PriorBeliefs.Usual);
        double Density(double log) => Normal.PDF(0, 0.25, log) * fit.Rows.Take(4).Aggregate(1.0, (so, row) =>
        {
            var inside = row.Evidence.Tones.Select((_, i) => row.Landed(i, fit.State)).Aggregate(1.0, (all, tone) =>
                all * (Normal.CDF(tone.Stops, tone.Spread, 0.5 * Math.Exp(log)) - Normal.CDF(tone.Stops, tone.Spread, -0.5 * Math.Exp(log))));
            var chance = 0.03 + (0.94 * (row.Evidence.Kept == true ? inside : 1 - inside));

            // A year old counts half.
            return so * Math.Pow(chance, row.Evidence.Id == "b" ? 0.5 : 1);
        });
        double Mean(Func<double, double> of) => Integral(log => of(log) * Density(log), -1, 1) / Integral(Density, -1, 1);
        var middle = Mean(log => log);
        var tolerance = Beliefs.From(sheets, Now).Tolerance;
        Assert.Equal(middle, Math.Log(tolerance.Factor), 1e-4);
        Assert.Equal(Math.Sqrt(Mean(log => (log - middle) * (log - middle))), tolerance.LogSpread, 1e-4);
        Assert.Equal(1, Beliefs.From([], Now).Tolerance.Factor, 1e-12);
    }

    private static double Integral(Func<double, double> of, double from, double to) => SimpsonRule.IntegrateComposite(of, from, to, 2000);
}
