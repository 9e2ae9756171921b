using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>A curve read backwards, fast: exposures of densities, held at the ends of what the paper can tell (ISO 6846: 0.04 above the lightest, 0.90 of the net density).</summary>
internal sealed class LgExposureOfDensity
{
    private const int Cells = 1024;
    private readonly double[] lg = new double[Cells + 1];
    private readonly double[] exposures = new double[Cells + 1];

    public LgExposureOfDensity(CharacteristicCurve curve)
    {
        Low = curve.MinimumDensity.Value + IsoPaperMeasures.FirstToneNetDensity;
        High = curve.MinimumDensity.Value + (IsoPaperMeasures.DarkestShareOfNetDensity * curve.NetDensity);
        for (var i = 0; i <= Cells; i++)
        {
            exposures[i] = curve.ExposureFor(Density.FromValue(Low + ((High - Low) * i / Cells))).LuxSeconds;
            lg[i] = Math.Log10(exposures[i]);
        }
    }

    /// <summary>Lightest density that tells.</summary>
    public double Low { get; }

    /// <summary>Darkest density that tells.</summary>
    public double High { get; }

    /// <summary>lg of the exposure, lux seconds.</summary>
    public double At(double density) => Between(lg, density);

    /// <summary>The exposure, lux seconds.</summary>
    public double ExposureAt(double density) => Between(exposures, density);

    private double Between(double[] values, double density)
    {
        var at = Cells * (Math.Clamp(density, Low, High) - Low) / (High - Low);
        var cell = Math.Min(Cells - 1, (int)at);
        return values[cell] + ((at - cell) * (values[cell + 1] - values[cell]));
    }
}
