using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>The life of one bottle as evidence of its developer: what was filled in and what happened to it, in order.</summary>
/// <param name="Id">Names the bottle among the others.</param>
/// <param name="Filled">At the start.</param>
/// <param name="Events">Each <see cref="ImageAppeared"/> among them is an observation of the bottle as it was then.</param>
public sealed record DeveloperLife(string Id, Volume Filled, IReadOnlyList<BottleEvent> Events);
