namespace Foramen.Field.Homes;

/// <summary>A device that is paired with this Home.</summary>
/// <param name="Id">Its number there.</param>
/// <param name="Name">Its name.</param>
/// <param name="LastMet">When it was last there.</param>
/// <param name="Revoked">Whether it was removed.</param>
public sealed record HomeDevice(int Id, string Name, DateTimeOffset LastMet, bool Revoked);
