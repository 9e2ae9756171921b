using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// The wavelengths that make the picture: the light's power times the paper's sensitivity, as parts of one. Immutable.
/// </summary>
public sealed class PaperLight
{
    private readonly (double Nanometres, double Part)[] lines;

    private PaperLight((double Nanometres, double Part)[] lines) => this.lines = lines;

    /// <summary>Mean wavelength, nm, weighted by effect.</summary>
    public double MeanNanometres => lines.Sum(line => line.Nanometres * line.Part);

    /// <summary>Wavelengths in nm with their parts, which add up to one; ascending.</summary>
    internal ReadOnlySpan<(double Nanometres, double Part)> Lines => lines;

    /// <summary>What a paper makes of a light.</summary>
    /// <exception cref="RefusalException">The paper sees nothing of the light.</exception>
    public static PaperLight Of(Spectrum light, PaperSensitivity paper)
    {
        var effect = Spectrum.Multiply(light, paper.Sensitivity);
        var sum = effect.Integral() / Spectrum.StepNanometres;
        if (sum <= 0)
        {
            throw new RefusalException($"The {paper.Name} paper sees nothing of the light \"{light.Name}\".");
        }

        return new PaperLight([.. effect.Values.ToArray()
            .Select((value, i) => (Nanometres: (double)Spectrum.Wavelength(i), Part: value / sum))
            .Where(line => line.Part > 1e-6)]);
    }

    /// <summary>Light of one wavelength, 200 to 2000 nm.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static PaperLight Monochromatic(double nanometres)
        => new([(Guard.Within(nanometres, 200, 2000, "the wavelength", "nm"), 1)]);
}
