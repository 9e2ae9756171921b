using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>The developer stood and aged.</summary>
/// <param name="Time">How long.</param>
/// <param name="Open">In a tray or an open jug, rather than in a closed bottle.</param>
/// <param name="Temperature">Of the developer meanwhile.</param>
public sealed record TimePassed(Duration Time, bool Open, Temperature Temperature) : BottleEvent;
