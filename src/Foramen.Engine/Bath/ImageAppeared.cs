using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>The first tone of a sheet was seen to appear, which shows how strong the bottle is. Only where the sheet can be watched.</summary>
/// <param name="Appearance">From the pour to the first visible tone.</param>
/// <param name="Temperature">Of the developer.</param>
public sealed record ImageAppeared(Duration Appearance, Temperature Temperature) : BottleEvent;
