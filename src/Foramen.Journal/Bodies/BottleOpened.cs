namespace Foramen.Journal.Bodies;

/// <summary>From here on the solution stands in the open: in a tray or an open jug.</summary>
public sealed record BottleOpened() : BottleBody(EntryKind.BottleOpened);
