namespace Foramen.Storage;

/// <summary>What an append did, after its commit.</summary>
/// <param name="Taken">How many entries were new.</param>
/// <param name="Known">How many were there already.</param>
/// <param name="Before">The cursor before it.</param>
/// <param name="After">The cursor after it; between the two lie only entries of this append.</param>
public sealed record Appended(int Taken, int Known, StoreCursor Before, StoreCursor After);
