using Foramen.Engine.Exposure;

namespace Foramen.Exchange.Paper;

/// <summary>What a day sheet says, on one page.</summary>
/// <param name="Title">The outing.</param>
/// <param name="Beneath">Day, sky, camera and paper in a line.</param>
/// <param name="Places">The places.</param>
/// <param name="Plan">The schedule, if one was made.</param>
/// <param name="Packing">What to pack.</param>
/// <param name="Cautions">What to mind.</param>
/// <param name="InZone">An instant as the clocks of the place show it.</param>
public sealed record DaySheet(
    string Title,
    string Beneath,
    IReadOnlyList<DaySheetPlace> Places,
    OutingPlan? Plan,
    IReadOnlyList<string> Packing,
    IReadOnlyList<string> Cautions,
    Func<DateTimeOffset, DateTimeOffset> InZone);
