namespace Foramen.Rehearsal.Lines;

/// <summary>To both sides: a new world begins, and nothing of the last one counts any more.</summary>
/// <param name="World">Its number, from 1.</param>
/// <param name="Seed">What to draw it from; meaningless to a photographer.</param>
/// <param name="Sheets">How many sheets there are.</param>
public sealed record BeginLine(int World, long Seed, int Sheets) : RehearsalLine;
