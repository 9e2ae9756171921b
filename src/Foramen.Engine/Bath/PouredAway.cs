using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>Used developer went into the waste container.</summary>
/// <param name="Volume">How much.</param>
public sealed record PouredAway(Volume Volume) : BottleEvent;
