using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>The trace of something that moved, on one tone of the print.</summary>
/// <param name="Bare">Density of the background alone, as the sheet is processed.</param>
/// <param name="Traced">Density with what moved.</param>
/// <param name="LeastSeen">Least difference in density that is seen there.</param>
/// <param name="Verdict">What is left of it.</param>
public sealed record MotionTrace(Density Bare, Density Traced, double LeastSeen, MotionVerdict Verdict)
{
}
