namespace Foramen.Field.Components;

/// <summary>A tone on the ladder.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Stops">Where it lies against the middle of the scale, stops; up is lighter in the scene.</param>
/// <param name="Detail">What becomes of it.</param>
/// <param name="Lost">Whether it falls outside what the sheet can hold.</param>
public sealed record LadderRung(string Name, double Stops, string? Detail = null, bool Lost = false);
