namespace Foramen.Pages.Speed;

/// <summary>A row under "Marks" of a file in bench/results.</summary>
/// <param name="Mark">Which mark it measures.</param>
/// <param name="Measured">In words.</param>
/// <param name="Ours">Our time, size or count; empty where the figure says it.</param>
/// <param name="Against">The peer's; empty without a peer.</param>
/// <param name="Figure">What the mark's limit speaks of: a ratio, a time, a share.</param>
/// <param name="Date">The day of the run.</param>
/// <param name="Machine">What it ran on, and how busy that was.</param>
/// <param name="File">The file's name.</param>
public sealed record MarkResult(string Mark, string Measured, string Ours, string Against, string Figure, string Date, string Machine, string File);
