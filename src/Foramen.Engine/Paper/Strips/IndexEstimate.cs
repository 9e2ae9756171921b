using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>The camera's exposure index as a strip says it: at the time and in the light of the strip, where failure and colour are contained in it.</summary>
/// <param name="Index">EI with its 90 % interval.</param>
/// <param name="At">The time that gave the mid-tone on the strip.</param>
/// <param name="Light">The light of the strip.</param>
/// <param name="Spread">Standard deviation, the doubt about the strip's light included.</param>
public sealed record IndexEstimate(Estimate Index, Duration At, LightColour Light, Stops Spread);
