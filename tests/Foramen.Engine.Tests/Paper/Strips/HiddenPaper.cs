using Foramen.Engine.Paper;
using MathNet.Numerics;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>Papers whose curve is known to the test only, in families of curves of which only the first is the one that is fitted.</summary>
internal sealed class HiddenPaper
{
    private readonly Func<double, double> share;

    private HiddenPaper(string family, PaperKind kind, double min, double net, Func<double, double> share)
    {
        Family = family;
        Kind = kind;
        Min = min;
        Net = net;
        this.share = share;
    }

    public string Family { get; }

    public PaperKind Kind { get; }

    public double Min { get; }

    public double Net { get; }

    /// <summary>A paper drawn at random: Dmin 0.04 to 0.10, Dn 1.4 to 2.1, medium to hard.</summary>
    public static HiddenPaper Draw(Random random, PaperKind kind)
    {
        var (min, net) = (0.04 + (0.06 * random.NextDouble()), 1.4 + (0.7 * random.NextDouble()));
        var k = 4.2 + (4 * random.NextDouble());
        var middle = 0.3 + (0.6 * random.NextDouble());
        var sign = kind == PaperKind.NegativeWorking ? 1 : -1;
        var g = Math.Exp(0.3 * ((2 * random.NextDouble()) - 1));
        return random.Next(4) switch
        {
            0 => new("Richards", kind, min, net, x => Math.Pow(1 + Math.Exp(-sign * k * (x - middle)), -g)),

            // Grains whose lg sensitivities are normally distributed.
            1 => new("normal", kind, min, net, x => 0.5 * SpecialFunctions.Erfc(-sign * k / 1.702 * (x - middle) / Math.Sqrt(2))),

            // Grains hit at random, more than once needed: 1 − exp(−(H/H0)^n).
            2 => new("hits", kind, min, net, x => 1 - Math.Exp(-Math.Log(2) * Math.Pow(10, sign * 0.8 * k / Math.Log(10) * (x - middle)))),

            // Two emulsions an eighth of a decade apart.
            _ => new("two emulsions", kind, min, net, x =>
                (0.5 / (1 + Math.Exp(-sign * 1.1 * k * (x - middle + 0.06)))) + (0.5 / (1 + Math.Exp(-sign * 1.1 * k * (x - middle - 0.06))))),
        };
    }

    public double Density(double lgExposure) => Min + (Net * share(lgExposure));

    public double LgExposureAt(double density)
    {
        var (low, high) = (-6.0, 8.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = (Density(middle) < density) == (Kind == PaperKind.NegativeWorking) ? (middle, high) : (low, middle);
        }

        return low;
    }
}
