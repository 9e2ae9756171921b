using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// How bright a coloured surface looks to a paper beside a neutral one: weights of the linear red, green and blue of sRGB, which add up
/// to one, so that a neutral surface keeps its luminance.
/// </summary>
/// <remarks>
/// Each channel stands for an even reflectance in its band (blue up to 500 nm, green to 590 nm, red beyond) under the light given. Three
/// numbers cannot say what a surface does in the violet and ultraviolet, where paper sees well: foliage, denim and some whites may come
/// out half a stop from what is said here. Blue-sensitive paper sees the blue channel only.
/// </remarks>
public sealed record PaperSight
{
    /// <summary>Last sample of the blue band, nm; a sample on the border goes to the band below it, whole.</summary>
    public const int BlueEndsNanometres = 500;

    /// <summary>Last sample of the green band, nm.</summary>
    public const int GreenEndsNanometres = 590;

    private PaperSight(double red, double green, double blue)
    {
        Red = red;
        Green = green;
        Blue = blue;
    }

    /// <summary>The eye instead of a paper: the luminance weights of sRGB (IEC 61966-2-1).</summary>
    public static PaperSight Eye { get; } = new(0.2126, 0.7152, 0.0722);

    /// <summary>Weight of linear red, 0 to 1.</summary>
    public double Red { get; }

    /// <summary>Weight of linear green, 0 to 1.</summary>
    public double Green { get; }

    /// <summary>Weight of linear blue, 0 to 1.</summary>
    public double Blue { get; }

    /// <summary>The sight of a paper in a light.</summary>
    /// <exception cref="RefusalException">The paper sees nothing of the light.</exception>
    public static PaperSight Of(PaperSensitivity paper, Spectrum light)
    {
        var effect = Spectrum.Multiply(light, paper.Sensitivity).Values;
        var bands = new double[3];
        for (var i = 0; i < effect.Length; i++)
        {
            var nanometres = Spectrum.Wavelength(i);
            bands[nanometres <= BlueEndsNanometres ? 2 : nanometres <= GreenEndsNanometres ? 1 : 0] += effect[i];
        }

        var sum = bands.Sum();
        return sum > 0
            ? new PaperSight(bands[0] / sum, bands[1] / sum, bands[2] / sum)
            : throw new RefusalException($"The {paper.Name} paper sees nothing of the light \"{light.Name}\".");
    }
}
