using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;

namespace Foramen.Journal.Fold;

/// <summary>A span of an exposure with constant light.</summary>
/// <param name="StartSeconds">Seconds from the first opening of the hole.</param>
/// <param name="Seconds">How long, s.</param>
/// <param name="LightStops">Light against the metered light, stops.</param>
/// <param name="Covered">Whether the hole was covered or closed: no light.</param>
/// <param name="Light">The light in one word, where it was said.</param>
public sealed record TallySegment(double StartSeconds, double Seconds, double LightStops, bool Covered, LightWord? Light)
{
    /// <summary>The same for the Engine's tally.</summary>
    public LightSpan ToSpan() => Covered
        ? LightSpan.CoveredFor(Duration.FromSeconds(Seconds))
        : new LightSpan(Duration.FromSeconds(Seconds), Stops.FromValue(LightStops));
}
