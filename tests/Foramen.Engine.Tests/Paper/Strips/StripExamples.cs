using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

/// <summary>Strips made of a known curve without noise, in lamp light.</summary>
internal static class StripExamples
{
    /// <summary>A strip of this curve.</summary>
    /// <param name="curve">The paper.</param>
    /// <param name="lux">Light on the sheet.</param>
    /// <param name="first">Seconds of the first patch.</param>
    /// <param name="stops">From patch to patch.</param>
    /// <param name="count">Patches.</param>
    /// <param name="exponent">The paper's p.</param>
    /// <param name="spread">Stated spread of the densities.</param>
    /// <param name="lightSpread">Stated spread of the light.</param>
    public static Strip Of(
        CharacteristicCurve curve, double lux, double first, double stops, int count, double exponent = 0.90, double spread = 0.02, double lightSpread = 0.1)
    {
        var patches = new List<StripPatch> { StripPatch.Masked(curve.UnexposedDensity, spread) };
        for (var i = 0; i < count; i++)
        {
            var seconds = first * Math.Pow(2, stops * i);
            patches.Add(StripPatch.Exposed(S(seconds), Seen(curve, lux, seconds, exponent), spread));
        }

        return new Strip { OnSheet = Lamp(lux), Light = LightColour.Lamp, LightSpread = Stops.FromValue(lightSpread), Patches = patches };
    }

    /// <summary>Light of a lamp that the paper counts as so many lux of 3000 K light.</summary>
    public static Illuminance Lamp(double lux) => Illuminance.FromLux(lux);

    public static Density Seen(CharacteristicCurve curve, double lux, double seconds, double exponent)
        => curve.DensityAt(H(lux * Math.Pow(seconds, seconds > 1 ? exponent : 1)));

    public static StripFit Fit(PaperKind kind, params Strip[] strips) => StripFit.Of(strips, kind, PaperSensitivity.BlueSensitive);
}
