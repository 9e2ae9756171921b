using Foramen.Journal.Bodies;

namespace Foramen.Journal.Fold;

/// <summary>Where a processing run stands.</summary>
/// <param name="Index">The present step, from 0.</param>
/// <param name="Step">Which bath it is.</param>
/// <param name="ElapsedSeconds">Time in it so far, s.</param>
/// <param name="ClockWentBack">Whether the clock stands before the step's beginning, so that the time so far is not known.</param>
public sealed record BathPosition(int Index, BathKind Step, double ElapsedSeconds, bool ClockWentBack);
