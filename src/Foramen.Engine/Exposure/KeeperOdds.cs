using Foramen.Engine.Paper;
using Foramen.Engine.Scene;
using MathNet.Numerics;

namespace Foramen.Engine.Exposure;

/// <summary>
/// Probability that every tone that matters lands in its band. Errors are normal in stops: one common to paper and bath (it scales image and flash),
/// one common to the image's light, one for the flash, and an independent one for each tone's reading. Given the common ones the tones are
/// independent, so the probability is a product of normal integrals, averaged over the common errors on a regular grid.
/// </summary>
internal sealed class KeeperOdds
{
    private const int GridPoints = 21;
    private const double GridReach = 3.5;

    private readonly ToneTerm[] terms;

    private KeeperOdds(ToneTerm[] terms) => this.terms = terms;

    /// <summary>Prepares the tones that matter; effective exposures are linear in image and flash, so they are kept apart.</summary>
    public static KeeperOdds For(PaperResponse response, IReadOnlyList<PlacedTone> tones, double meteredSeconds, double flashEffective, bool flashFallsOff)
    {
        var terms = new List<ToneTerm>(tones.Count);
        foreach (var tone in tones)
        {
            var band = RenderingBand.On(response.Paper.Curve, tone.Rendering);
            if (band.Aim is null)
            {
                continue;
            }

            terms.Add(new ToneTerm(
                tone.OnSheet.Lux * tone.ActinicRatio * response.ActinicFactor * meteredSeconds,
                flashEffective * (flashFallsOff ? tone.Falloff : 1),
                band.Low.LuxSeconds,
                band.High?.LuxSeconds ?? double.PositiveInfinity,
                SpreadOf(tone)));
        }

        return new KeeperOdds([.. terms]);
    }

    /// <summary>A reading that is only a bound is a guess within about a stop, whatever the meter's own spread.</summary>
    public static double SpreadOf(PlacedTone tone)
        => tone.Limit == LuminanceLimit.Exact ? tone.MeterSpread.Value : Math.Max(1, tone.MeterSpread.Value);

    /// <summary>The probability under these errors.</summary>
    public double Under(ExposureErrors errors, bool withToneReadings = true)
    {
        var paper = Grid(errors.OfPaper.Value);
        var image = Grid(errors.OfImage.Value);
        var flash = Array.Exists(terms, t => t.Flash > 0) ? Grid(errors.Flash.Value, 7) : [(0.0, 1.0)];
        var sum = 0.0;
        foreach (var (paperError, paperWeight) in paper)
        {
            foreach (var (flashError, flashWeight) in flash)
            {
                foreach (var (imageError, imageWeight) in image)
                {
                    var weight = paperWeight * flashWeight * imageWeight;
                    sum += weight * Product(paperError, imageError, flashError, withToneReadings);
                }
            }
        }

        return Math.Clamp(sum, 0, 1);
    }

    /// <summary>The probability given the common errors, in stops.</summary>
    public double Product(double paperError, double imageError, double flashError, bool withToneReadings)
    {
        var product = 1.0;
        foreach (var term in terms)
        {
            product *= term.ChanceInBand(paperError, imageError, flashError, withToneReadings);
            if (product < 1e-9)
            {
                return 0;
            }
        }

        return product;
    }

    /// <summary>Nodes and weights of a regular grid over a normal of this spread; a single node where there is none.</summary>
    internal static (double Node, double Weight)[] Grid(double spread, int points = GridPoints)
    {
        if (spread <= 0)
        {
            return [(0, 1)];
        }

        var grid = new (double Node, double Weight)[points];
        var total = 0.0;
        for (var i = 0; i < points; i++)
        {
            var z = GridReach * ((2.0 * i / (points - 1)) - 1);
            var weight = Math.Exp(-z * z / 2);
            grid[i] = (z * spread, weight);
            total += weight;
        }

        for (var i = 0; i < points; i++)
        {
            grid[i].Weight /= total;
        }

        return grid;
    }

    private readonly record struct ToneTerm(double Image, double Flash, double Low, double High, double Spread)
    {
        public double ChanceInBand(double paperError, double imageError, double flashError, bool withToneReadings)
        {
            var paper = Math.Pow(2, paperError);
            var flash = Flash * Math.Pow(2, flashError);
            var image = Image * Math.Pow(2, imageError);

            // The band for the image alone, once the flash has taken its part.
            var low = (Low / paper) - flash;
            var high = (High / paper) - flash;
            if (high <= 0)
            {
                return 0;
            }

            var lowStops = low <= 0 ? double.NegativeInfinity : Math.Log2(low / image);
            var highStops = double.IsPositiveInfinity(high) ? double.PositiveInfinity : Math.Log2(high / image);
            if (!withToneReadings || Spread <= 0)
            {
                return lowStops <= 0 && highStops >= 0 ? 1 : 0;
            }

            return NormalBelow(highStops / Spread) - NormalBelow(lowStops / Spread);
        }

        private static double NormalBelow(double z) => double.IsNegativeInfinity(z) ? 0
            : double.IsPositiveInfinity(z) ? 1
            : 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));
    }
}
