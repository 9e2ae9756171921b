namespace Foramen.Exchange.Places;

/// <summary>A plain file of places.</summary>
/// <param name="Places">The places.</param>
public sealed record PlaceList(IReadOnlyList<PlaceRecord> Places);
