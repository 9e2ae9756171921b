using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>A curve read backwards, fast: lg exposure of densities, held at the ends of what the paper can tell (ISO 6846: 0.04 above the lightest, 0.90 of the net density).</summary>
internal sealed class LgExposureOfDensity
{
    private const int Cells = 1024;
    private readonly double[] lg = new double[Cells + 1];

    public LgExposureOfDensity(CharacteristicCurve curve)
    {
        Low = curve.MinimumDensity.Value + IsoPaperMeasures.FirstToneNetDensity;
        High = curve.MinimumDensity.Value + (0.90 * curve.NetDensity);
        for (var i = 0; i <= Cells; i++)
        {
            lg[i] = Math.Log10(curve.ExposureFor(Density.FromValue(Low + ((High - Low) * i / Cells))).LuxSeconds);
        }
    }

    /// <summary>Lightest density that tells.</summary>
    public double Low { get; }

    /// <summary>Darkest density that tells.</summary>
    public double High { get; }

    public double At(double density)
    {
        var at = Cells * (Math.Clamp(density, Low, High) - Low) / (High - Low);
        var cell = Math.Min(Cells - 1, (int)at);
        return lg[cell] + ((at - cell) * (lg[cell + 1] - lg[cell]));
    }
}
