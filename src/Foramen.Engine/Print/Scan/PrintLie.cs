namespace Foramen.Engine.Print;

/// <summary>How a print lies on a scan against the finished picture.</summary>
/// <param name="Quarters">Quarter turns, 0 to 3, by which the names of its corners must move on so that the picture stands upright.</param>
/// <param name="Mirrored">Whether left and right change places too: the coating looks back at the subject, so a sheet out of the camera shows it mirrored.</param>
public readonly record struct PrintLie(int Quarters, bool Mirrored);
