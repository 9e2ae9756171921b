namespace Foramen.Journal.Fold;

/// <summary>A kind of entry in one version of its schema.</summary>
public readonly record struct KindVersion(string Kind, int Version);
