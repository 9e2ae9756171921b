namespace Foramen.Field.Homes;

/// <summary>A workshop, as its leader sees it.</summary>
/// <param name="Id">Its number at Home.</param>
/// <param name="Name">Its name.</param>
/// <param name="Ended">Whether it was ended.</param>
/// <param name="Members">Who joined, also those who left.</param>
public sealed record Workshop(int Id, string Name, bool Ended, IReadOnlyList<HomeDevice> Members);
