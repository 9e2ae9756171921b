using Foramen.Engine.Exposure;

namespace Foramen.Exchange.Paper;

/// <summary>A place on a day sheet.</summary>
/// <param name="Place">The place.</param>
/// <param name="Windows">Its windows of the day.</param>
/// <param name="Chart">Its day.</param>
/// <param name="Note">A line about it, or null.</param>
public sealed record DaySheetPlace(OutingPlace Place, IReadOnlyList<PlaceWindow> Windows, DayChart Chart, string? Note);
