using Foramen.Engine.Light;
using Foramen.Field.Components;

namespace Foramen.Field.Bench.Strips;

/// <summary>The colours of light that a strip is made in.</summary>
public static class StripLights
{
    /// <summary>The choices.</summary>
    public static IReadOnlyList<Option<LightColour>> Options { get; } =
        [.. LightColour.Known.Where(light => light != LightColour.BlueShade && light != LightColour.LowSun).Select(light => new Option<LightColour>(light, light.Name))];

    /// <summary>The choice that is nearest, in reciprocal temperature, which is how colours of light differ.</summary>
    public static LightColour Nearest(LightColour light)
        => Options.MinBy(one => Math.Abs((1 / one.Value.Temperature.Kelvin) - (1 / light.Temperature.Kelvin)))!.Value;
}
