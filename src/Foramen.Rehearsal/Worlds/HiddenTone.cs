namespace Foramen.Rehearsal.Worlds;

/// <summary>A tone's truth.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Rendering">How it is wanted.</param>
/// <param name="Band">Where it must land; null where it may do what it likes.</param>
/// <param name="LuminanceStops">lg2 of its luminance in cd/m² at metering.</param>
/// <param name="ReadingError">How wrong its own reading is, stops.</param>
internal sealed record HiddenTone(string Name, string Rendering, HiddenBand? Band, double LuminanceStops, double ReadingError);
