using System.Diagnostics;
using System.Globalization;
using System.Text;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Foramen.Benchmarks;

/// <summary>A strip's fit with its covariance, against the library's plain Levenberg–Marquardt on the same patches in the same run.</summary>
internal static class StripTime
{
    private const int Rounds = 200;
    private const double Lux = 0.1;

    public static string Measure()
    {
        var strip = Make();
        double speed = 0, library = 0;
        var ours = Times(() => speed = StripFit.Of([strip], PaperKind.NegativeWorking, PaperSensitivity.BlueSensitive).Speed!.Value.Value);
        var theirs = Times(() => library = Library(strip));
        var oursAgain = Times(() => StripFit.Of([strip], PaperKind.NegativeWorking, PaperSensitivity.BlueSensitive));
        var fit = StripFit.Of([strip], PaperKind.NegativeWorking, PaperSensitivity.BlueSensitive);
        var advice = Times(() => StripAdvice.After(fit, StripGoal.Failure), 20);
        var load = MarkRows.Load;
        var text = new StringBuilder();
        text.AppendLine("# A strip fitted: measured");
        text.AppendLine();
        text.AppendLine(CultureInfo.InvariantCulture, $"{DateTime.UtcNow:yyyy-MM-dd}, {Environment.ProcessorCount} logical processors, .NET {Environment.Version}, `bench/run strip`, {Rounds} single runs each, ours before and after the peer, load average at the end {load}.");
        text.AppendLine("Ours: five parameters of the curve, failure and light, priors, Huber weights weighed until they stand, at least three starts, covariance, speed, range, index and contrast with intervals.");
        text.AppendLine("The peer: MathNet.Numerics' LevenbergMarquardtMinimizer once, four parameters, plain squares, covariance; no speed or range with interval. It is a floor, not the same work.");
        text.AppendLine();
        text.AppendLine("| what | median | fastest | should be |");
        text.AppendLine("| --- | --- | --- | --- |");
        text.AppendLine(CultureInfo.InvariantCulture, $"| fit of twelve patches with covariance, ours | {(ours.Median + oursAgain.Median) / 2:0.00} ms | {Math.Min(ours.Fastest, oursAgain.Fastest):0.00} ms | ≤ 20 ms |");
        text.AppendLine(CultureInfo.InvariantCulture, $"| one plain fit by the library | {theirs.Median:0.00} ms | {theirs.Fastest:0.00} ms | |");
        text.AppendLine(CultureInfo.InvariantCulture, $"| the most informative next strip for failure, out of all that can be made | {advice.Median:0.0} ms | {advice.Fastest:0.0} ms | |");
        text.AppendLine();
        text.AppendLine(CultureInfo.InvariantCulture, $"ISO speed of the paper 500; ours {speed:0}, the library's {library:0} (noise of 0.02 on each patch, one of twelve misread by 0.25).");
        var marks = new MarkRows(MarkRows.Machine, load);
        marks.Add(
            "strip.fit", $"twelve patches, one misread, median", $"{(ours.Median + oursAgain.Median) / 2:0.00} ms", $"{theirs.Median:0.00} ms (a plain fit by MathNet.Numerics, less work)", $"{(ours.Median + oursAgain.Median) / 2:0.00} ms");
        return text.Append(marks).ToString();
    }

    private static Strip Make()
    {
        var curve = LogisticCurve.FromRange(
            PaperKind.NegativeWorking, Density.FromValue(0.06), Density.FromValue(2.06), 110, Density.FromValue(0.66), LuminousExposure.FromLuxSeconds(2));
        double[] noise = [0.011, -0.018, 0.02, -0.004, 0.25, -0.022, 0.007, 0.015, -0.013, 0.021, -0.009];
        var patches = new List<StripPatch> { StripPatch.Masked(curve.MinimumDensity, 0.02) };
        for (var i = 0; i < noise.Length; i++)
        {
            var seconds = 4 * Math.Pow(2, 0.5 * i);
            var density = curve.DensityAtLg(Math.Log10(Lux) + (0.9 * Math.Log10(seconds))) + noise[i];
            patches.Add(StripPatch.Exposed(Duration.FromSeconds(seconds), Density.FromValue(Math.Max(0, density)), 0.02));
        }

        return new Strip { OnSheet = Illuminance.FromLux(Lux), Light = LightColour.Lamp, Patches = patches };
    }

    private static double Library(Strip strip)
    {
        var lit = strip.Patches.Where(patch => patch.Time.Seconds > 0).ToList();
        var x = Vector<double>.Build.DenseOfEnumerable(lit.Select(patch => Math.Log10(Lux) + (0.9 * Math.Log10(patch.Time.Seconds))));
        var y = Vector<double>.Build.DenseOfEnumerable(lit.Select(patch => patch.Density.Value));
        var model = ObjectiveFunction.NonlinearModel(
            (p, at) => at.Map(one => p[0] + (p[1] / (1 + Math.Exp(-p[2] * (one - p[3]))))),
            (p, at) => Matrix<double>.Build.Dense(at.Count, 4, (i, j) => Derivative(p, at[i], j)),
            x,
            y);
        var fit = new LevenbergMarquardtMinimizer().FindMinimum(model, Vector<double>.Build.Dense([0.1, 1.8, 4, 0.3]));
        var best = fit.MinimizingPoint;
        var share = 0.6 / best[1];
        return fit.Covariance is null ? double.NaN : 1000 / Math.Pow(10, best[3] + (Math.Log(share / (1 - share)) / best[2]));
    }

    private static double Derivative(Vector<double> p, double x, int j)
    {
        var share = 1 / (1 + Math.Exp(-p[2] * (x - p[3])));
        var slope = p[1] * share * (1 - share);
        return j switch
        {
            0 => 1,
            1 => share,
            2 => slope * (x - p[3]),
            _ => -slope * p[2],
        };
    }

    private static (double Median, double Fastest) Times(Action work, int rounds = Rounds)
    {
        for (var i = 0; i < rounds / 4; i++)
        {
            work();
        }

        var times = new double[rounds];
        for (var i = 0; i < rounds; i++)
        {
            var watch = Stopwatch.StartNew();
            work();
            times[i] = watch.Elapsed.TotalMilliseconds;
        }

        Array.Sort(times);
        return (times[rounds / 2], times[0]);
    }
}
