using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>One patch of a planned strip.</summary>
/// <param name="Number">From 1, the least exposed first.</param>
/// <param name="Total">All the light it gets, counted as time.</param>
/// <param name="TimingSpread">Standard deviation of that time as a hand with a card keeps it.</param>
public readonly record struct StripStep(int Number, Duration Total, Duration TimingSpread);
