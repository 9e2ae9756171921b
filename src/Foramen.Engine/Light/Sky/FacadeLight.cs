using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>Light on a plane, by where it comes from.</summary>
/// <param name="Direct">From the sun, and from the moon when the sun is down.</param>
/// <param name="FromSky">From the sky.</param>
/// <param name="FromGround">From the ground before it.</param>
public readonly record struct FacadeLight(Illuminance Direct, Illuminance FromSky, Illuminance FromGround)
{
    /// <summary>All of it.</summary>
    public Illuminance Total => Illuminance.FromLux(Direct.Lux + FromSky.Lux + FromGround.Lux);

    /// <summary>Luminance of an evenly scattering surface there: ρE/π.</summary>
    public Luminance LuminanceOf(Reflectance reflectance)
        => Luminance.FromCandelasPerSquareMetre(reflectance.Fraction * Total.Lux / Math.PI);
}
