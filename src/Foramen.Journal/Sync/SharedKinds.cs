using Foramen.Journal.Bodies;

namespace Foramen.Journal.Sync;

/// <summary>
/// What the people of a workshop share: papers and the strips that measured them, bottles and what went through them, places. What went through a bottle
/// must be known to all, for it decides how long the next sheet stays in it. Kinds that this version does not know are not shared.
/// </summary>
public static class SharedKinds
{
    /// <summary>The kinds.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        EntryKind.PaperDefined, EntryKind.StripMade, EntryKind.StripRead, EntryKind.PlaceDefined,
        EntryKind.BottleMixed, EntryKind.BottleToppedUp, EntryKind.BottleWarmthRead, EntryKind.BottleOpened, EntryKind.BottleClosed, EntryKind.BottleDiscarded,
        EntryKind.SheetDeveloped, EntryKind.SheetFixed,
    ];
}
