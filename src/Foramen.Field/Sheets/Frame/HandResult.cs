using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Field.Sheets.Frame;

/// <summary>What framing by hand comes to.</summary>
/// <param name="Subject">The subject as typed.</param>
/// <param name="Level">With the camera level.</param>
/// <param name="Tilted">Tilted so that the room above and below is the same.</param>
/// <param name="NearestLevel">Where it fits a level camera with the room that aiming needs; null where nowhere.</param>
/// <param name="NearestTilted">Where it fits a tilted camera with that room.</param>
public sealed record HandResult(FramingSubject Subject, FramingFit Level, FramingFit Tilted, Length? NearestLevel, Length NearestTilted);
