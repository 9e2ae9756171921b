namespace Foramen.Storage;

/// <summary>A group of people that a leader opened.</summary>
/// <param name="Id">Its number at this Home.</param>
/// <param name="Name">What the leader calls it.</param>
/// <param name="OpenedAt">Since when.</param>
/// <param name="Ended">Whether it was ended.</param>
public sealed record Workshop(int Id, string Name, DateTimeOffset OpenedAt, bool Ended);
