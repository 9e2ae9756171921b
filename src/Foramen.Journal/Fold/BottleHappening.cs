using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;

namespace Foramen.Journal.Fold;

/// <summary>Something that happened to a bottle.</summary>
/// <param name="Order">Where the entry stands; <see cref="EntryOrder.Id"/> is the entry.</param>
/// <param name="At">When it was written down, by the clock of the device that wrote it.</param>
/// <param name="Said">A topping up, a temperature, an opening or closing, or a sheet that went through.</param>
public sealed record BottleHappening(EntryOrder Order, DateTimeOffset At, EntryBody Said)
{
    /// <summary>When it happened: before it was written down where that was said.</summary>
    public DateTimeOffset HappenedAt => At.AddSeconds(-(Said switch
    {
        BottleBody bottle => bottle.SecondsAgo,
        DevelopedIn sheet => sheet.SecondsAgo,
        _ => null,
    } ?? 0));
}
