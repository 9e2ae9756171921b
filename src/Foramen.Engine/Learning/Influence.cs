using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>How far one piece of evidence moved a prediction: with it against without it.</summary>
/// <param name="Evidence">The piece of evidence.</param>
/// <param name="Moved">By how much lighter the sheet is now expected than without it.</param>
/// <param name="Weight">How far it was believed, 0 to 1: little for a judgement that contradicts the others.</param>
public sealed record Influence(Evidence Evidence, Stops Moved, double Weight);
