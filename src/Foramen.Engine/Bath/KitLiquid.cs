using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>One solution to bring.</summary>
/// <param name="Bath">What it is for.</param>
/// <param name="Working">Working solution in all.</param>
/// <param name="Concentrate">Concentrate in that.</param>
/// <param name="Water">Water in that.</param>
/// <param name="Fills">How many times its bottle is filled afresh.</param>
public sealed record KitLiquid(ProcessingBath Bath, Volume Working, Volume Concentrate, Volume Water, int Fills);
