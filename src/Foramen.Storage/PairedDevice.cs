namespace Foramen.Storage;

/// <summary>A device that was paired.</summary>
/// <param name="Id">Its number at this Home.</param>
/// <param name="Name">What its owner calls it.</param>
/// <param name="PairedAt">Since when.</param>
/// <param name="LastMet">When it was last here, to the minute.</param>
/// <param name="Revoked">Whether its token was taken back.</param>
/// <param name="WorkshopId">The workshop it is a member of; null for a device of the household.</param>
/// <param name="View">How often what it may see has grown backwards.</param>
public sealed record PairedDevice(int Id, string Name, DateTimeOffset PairedAt, DateTimeOffset LastMet, bool Revoked, int? WorkshopId = null, int View = 0);
