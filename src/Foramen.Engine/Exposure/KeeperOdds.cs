using Foramen.Engine.Quantities;
using MathNet.Numerics;

namespace Foramen.Engine.Exposure;

/// <summary>
/// Probability that every tone that matters lands in its band. Errors are normal in stops: one common to paper and bath (it scales image and flash),
/// one common to the image's light, one for the flash, and an independent one for each tone's reading. Given the common ones the tones are
/// independent, so the probability is a product of normal integrals, averaged over the common errors on a regular grid.
/// </summary>
internal sealed class KeeperOdds
{
    private const int GridPoints = 17;
    private const int FlashGridPoints = 5;
    private const double GridReach = 3.5;

    private readonly ToneAim[] aims;
    private readonly double meteredSeconds;

    /// <summary>The odds of these tones after some metered seconds.</summary>
    public KeeperOdds(ToneAim[] aims, double meteredSeconds)
    {
        this.aims = aims;
        this.meteredSeconds = meteredSeconds;
    }

    /// <summary>The probability under these errors.</summary>
    public double Under(ExposureErrors errors, bool withToneReadings = true)
    {
        if (!Array.Exists(aims, aim => aim.Flash > 0))
        {
            // Without a flash, paper and image only ever act together.
            return Math.Clamp(OverImage(0, 0, Grid(Stops.RootSumSquare(errors.OfPaper, errors.OfImage).Value, (2 * GridPoints) - 1), withToneReadings), 0, 1);
        }

        var image = Grid(errors.OfImage.Value);
        var flash = Grid(errors.Flash.Value, FlashGridPoints);
        var sum = 0.0;
        foreach (var (paperError, paperWeight) in Grid(errors.OfPaper.Value))
        {
            foreach (var (flashError, flashWeight) in flash)
            {
                sum += paperWeight * flashWeight * OverImage(paperError, flashError, image, withToneReadings);
            }
        }

        return Math.Clamp(sum, 0, 1);
    }

    /// <summary>The probability given the errors of paper and flash, averaged over those of the image's light.</summary>
    /// <param name="paperError">Error of paper and bath, stops.</param>
    /// <param name="flashError">Error of the flash, stops.</param>
    /// <param name="image">Grid of the image's errors.</param>
    /// <param name="withToneReadings">Whether the readings of single tones may be wrong.</param>
    public double OverImage(double paperError, double flashError, (double Node, double Weight)[] image, bool withToneReadings)
    {
        // The band for the image alone, once paper and flash have taken their part, in stops about what was planned.
        Span<(double Low, double High, double Spread)> bands = stackalloc (double, double, double)[Math.Min(aims.Length, 64)];
        var paper = Math.Pow(2, paperError);
        var strength = Math.Pow(2, flashError);
        for (var i = 0; i < bands.Length; i++)
        {
            var aim = aims[i];
            var planned = aim.PerSecond * meteredSeconds;
            var low = (aim.Low / paper) - (aim.Flash * strength);
            var high = (aim.High / paper) - (aim.Flash * strength);
            if (high <= 0)
            {
                return 0;
            }

            bands[i] = (low <= 0 ? double.NegativeInfinity : Math.Log2(low / planned), Math.Log2(high / planned), withToneReadings ? aim.Spread : 0);
        }

        var sum = 0.0;
        foreach (var (error, weight) in image)
        {
            var product = weight;
            foreach (var (low, high, spread) in bands)
            {
                product *= Between(low - error, high - error, spread);
                if (product < 1e-9)
                {
                    break;
                }
            }

            sum += product;
        }

        return sum;
    }

    /// <summary>The probability given the error of paper and bath and how far off each tone's reading is, averaged over the image's errors.</summary>
    /// <param name="paperError">Error of paper and bath, stops.</param>
    /// <param name="image">Grid of the image's errors.</param>
    /// <param name="readingError">Error of the reading of the tone with this number, in its own standard deviations.</param>
    public double GivenReadings(double paperError, (double Node, double Weight)[] image, Func<int, double> readingError)
    {
        var paper = Math.Pow(2, paperError);
        var (low, high) = (double.NegativeInfinity, double.PositiveInfinity);
        for (var i = 0; i < aims.Length; i++)
        {
            var aim = aims[i];
            var planned = aim.PerSecond * meteredSeconds * Math.Pow(2, aim.Spread * readingError(i));
            low = Math.Max(low, Math.Log2(Math.Max(1e-30, (aim.Low / paper) - aim.Flash) / planned));
            high = Math.Min(high, Math.Log2(Math.Max(1e-30, (aim.High / paper) - aim.Flash) / planned));
        }

        var sum = 0.0;
        foreach (var (error, weight) in image)
        {
            sum += error >= low && error <= high ? weight : 0;
        }

        return sum;
    }

    /// <summary>Whether every tone lands in its band if nothing is off.</summary>
    public bool ArePlaced() => OverImage(0, 0, [(0, 1)], withToneReadings: false) > 0.5;

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

    private static double Between(double low, double high, double spread)
        => spread <= 0
            ? low <= 0 && high >= 0 ? 1 : 0
            : NormalBelow(high / spread) - NormalBelow(low / spread);

    private static double NormalBelow(double z) => z < -6 ? 0 : z > 6 ? 1 : 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));
}
