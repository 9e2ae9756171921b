namespace Foramen.Engine.Print;

/// <summary>A spell of a content's way along a closed line.</summary>
/// <param name="From">Samples it has been carried forward by when the spell begins.</param>
/// <param name="To">When it ends.</param>
/// <param name="Weight">The spell's part of the light.</param>
internal readonly record struct RingShift(double From, double To, double Weight);
