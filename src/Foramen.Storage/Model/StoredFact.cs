namespace Foramen.Storage.Model;

/// <summary>Something the store knows of itself.</summary>
internal sealed class StoredFact
{
    /// <summary>The store's own name, drawn when it is made: an arrival number means something only together with it.</summary>
    public const string Epoch = "epoch";

    /// <summary>Stands while a backup is being restored; a store that holds it is not whole.</summary>
    public const string Restoring = "restoring";

    /// <summary>Stands once every entry has been asked what it is about; stores of earlier versions are asked when they are opened.</summary>
    public const string Topics = "topics";

    public required string Name { get; set; }

    public required string Value { get; set; }
}
