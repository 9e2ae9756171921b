using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Paper;

/// <summary>Curves with round parameters whose values were worked out apart from this code.</summary>
internal static class PaperExamples
{
    /// <summary>Dmin 0.06, Dmax 2.06, ISO range 110, ISO speed 500: the speed point lies at 2 lx s.</summary>
    public static LogisticCurve Negative { get; } = LogisticCurve.FromRange(
        PaperKind.NegativeWorking, D(0.06), D(2.06), 110, D(0.66), H(2));

    /// <summary>Dmin 0.08, net 1.90, k 7, x0 0.60.</summary>
    public static LogisticCurve Positive { get; } = LogisticCurve.Create(PaperKind.DirectPositive, D(0.08), D(1.98), 7, 0.6);

    public static Density D(double value) => Density.FromValue(value);

    public static LuminousExposure H(double luxSeconds) => LuminousExposure.FromLuxSeconds(luxSeconds);

    public static Duration S(double seconds) => Duration.FromSeconds(seconds);
}
