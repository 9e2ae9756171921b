namespace Foramen.Journal.Bodies;

/// <summary>From here on the solution stands closed, as it does after mixing.</summary>
public sealed record BottleClosed() : BottleBody(EntryKind.BottleClosed);
