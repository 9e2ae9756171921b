using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// What is left in a layer that gives up its fixer on one side to clean water: (8/π²)·Σ exp(−(2k + 1)²π²F/4)/(2k + 1)² with F = D·t/l²
/// (J. Crank, <i>The Mathematics of Diffusion</i>, 1975, sec. 4.3, from memory). Thiosulphate also clings to fibres, which this leaves out,
/// so it is a lower bound of the time for fibre papers.
/// </summary>
public sealed record WashingOut
{
    private WashingOut(double thicknessMetres, double diffusivity)
    {
        ThicknessMetres = thicknessMetres;
        DiffusivitySquareMetresPerSecond = diffusivity;
    }

    /// <summary>The emulsion of a coated paper: 30 µm, 4e-10 m²/s (our assumption).</summary>
    public static WashingOut Coated { get; } = new(30e-6, 4e-10);

    /// <summary>The base of a fibre paper: 250 µm, 1e-10 m²/s (our assumption).</summary>
    public static WashingOut Fibre { get; } = new(250e-6, 1e-10);

    /// <summary>l, m.</summary>
    public double ThicknessMetres { get; }

    /// <summary>D, m²/s.</summary>
    public double DiffusivitySquareMetresPerSecond { get; }

    /// <summary>Time constant of the slowest part, 4l²/(π²D).</summary>
    public Duration TimeConstant
        => Duration.FromSeconds(4 * ThicknessMetres * ThicknessMetres / (Math.PI * Math.PI * DiffusivitySquareMetresPerSecond));

    /// <summary>A layer.</summary>
    /// <param name="thickness">1 µm to 5 mm.</param>
    /// <param name="diffusivity">1e-12 to 1e-8 m²/s.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static WashingOut FromLayer(Length thickness, double diffusivity) => new(
        Guard.Within(thickness.Metres, 1e-6, 5e-3, "the layer's thickness", "m"),
        Guard.Within(diffusivity * 1e12, 1, 10_000, "the diffusivity in millionths of a square millimetre per second") / 1e12);

    /// <summary>The layer of a kind of paper.</summary>
    public static WashingOut Of(SheetBase sheetBase) => sheetBase == SheetBase.Fibre ? Fibre : Coated;

    /// <summary>The part left in the layer after a time in clean water.</summary>
    public double Left(Duration time)
    {
        var f = DiffusivitySquareMetresPerSecond * time.Seconds / (ThicknessMetres * ThicknessMetres);

        // The series crawls near zero, where the short-time form 1 − 2·sqrt(F/π) is exact to better than 1e-15.
        return f < 0.02 ? 1 - (2 * Math.Sqrt(f / Math.PI)) : Series(f);
    }

    private static double Series(double f)
    {
        double sum = 0;
        for (var k = 0; k < 40; k++)
        {
            var odd = (2 * k) + 1;
            var term = Math.Exp(-odd * odd * Math.PI * Math.PI * f / 4) / (odd * odd);
            sum += term;
            if (term < 1e-17)
            {
                break;
            }
        }

        return 8 / (Math.PI * Math.PI) * sum;
    }
}
