using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bottles;

/// <summary>What one sheet asks of a developer.</summary>
/// <param name="Area">Of the sheet.</param>
/// <param name="SizeIsKnown">Whether the area comes from its camera, rather than from <see cref="SheetLoads.AssumedArea"/>.</param>
/// <param name="MeanDensity">Above the paper's white.</param>
/// <param name="Source">Where the density comes from.</param>
public sealed record SheetLoad(Area Area, bool SizeIsKnown, Density MeanDensity, DensitySource Source);
