namespace Foramen.Journal.Fold;

/// <summary>An entry of a known kind and version that has no effect, because of what it says.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Sentence">Why, for the user.</param>
public sealed record UnusedEntry(Ulid Entry, string Sentence);
