namespace Foramen.Rehearsal.Lines;

/// <summary>To both sides: it is over; leave.</summary>
public sealed record EndLine : RehearsalLine;
