namespace Foramen.Storage.Model;

/// <summary>A group of people that a leader opened.</summary>
internal sealed class StoredWorkshop
{
    public int Id { get; set; }

    /// <summary>What the leader calls it.</summary>
    public required string Name { get; set; }

    public long OpenedAtUnixMilliseconds { get; set; }

    /// <summary>When it was ended, with every member's token; null while it goes on.</summary>
    public long? EndedAtUnixMilliseconds { get; set; }
}
