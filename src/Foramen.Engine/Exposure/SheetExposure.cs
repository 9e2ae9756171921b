using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>What is done to a sheet: how long the hole is open and how long it is flashed before.</summary>
/// <param name="Time">Time the hole is open, by the clock, failure included.</param>
/// <param name="Flash">Time of the flash by the clock; zero for none.</param>
public readonly record struct SheetExposure(Duration Time, Duration Flash);
