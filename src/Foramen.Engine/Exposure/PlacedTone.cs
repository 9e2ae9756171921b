using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Exposure;

/// <summary>A tone where it lies on the sheet: the light it puts there, falloff included, and how it should come out.</summary>
/// <param name="Name">What the user calls it.</param>
/// <param name="Rendering">How it is wanted.</param>
/// <param name="OnSheet">Illuminance of its image on the sheet, as a meter would count it.</param>
/// <param name="ActinicRatio">Its worth to the paper against a neutral tone of the same luminance; 1 for neutral.</param>
/// <param name="Falloff">Its image's light against the middle of the sheet, 0 to about 1; a flash through the hole falls off alike.</param>
/// <param name="MeterSpread">Standard deviation of its own reading, stops.</param>
/// <param name="Limit">Whether the reading is exact, a lower or an upper bound.</param>
public sealed record PlacedTone(
    string Name, Rendering Rendering, Illuminance OnSheet, double ActinicRatio, double Falloff, Stops MeterSpread, LuminanceLimit Limit);
