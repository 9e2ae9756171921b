namespace Foramen.Rehearsal.Runs;

/// <summary>One sheet of a rehearsal.</summary>
/// <param name="Number">Its number in that world, from 1.</param>
/// <param name="Keeper">Whether it was worth keeping.</param>
/// <param name="Odds">What the photographer gave it; null where none were given.</param>
public readonly record struct RehearsedSheet(int Number, bool Keeper, double? Odds);
