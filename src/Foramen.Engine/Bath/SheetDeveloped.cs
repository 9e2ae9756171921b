using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>A sheet went through the developer.</summary>
/// <param name="Area">Of the sheet.</param>
/// <param name="MeanDensity">Mean density above the paper's white, from the predicted or the judged print: a dark sheet takes more.</param>
/// <param name="Lost">Carried out with the sheet and spilled at the transfer; a millilitre or two (common practice, no source).</param>
public sealed record SheetDeveloped(Area Area, Density MeanDensity, Volume Lost) : BottleEvent;
