using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Fold;

/// <summary>Something that happened at the hole.</summary>
/// <param name="Kind">What.</param>
/// <param name="Order">Where its entry stands.</param>
/// <param name="At">When the entry was written, by the device's clock.</param>
/// <param name="SecondsAgo">How long before that it happened, s.</param>
/// <param name="LightStops">Light from then on against the metered light, stops.</param>
/// <param name="Light">The light in one word, where it was said.</param>
public sealed record HoleEvent(
    HoleEventKind Kind, EntryOrder Order, DateTimeOffset At, double SecondsAgo, double LightStops, LightWord? Light);
