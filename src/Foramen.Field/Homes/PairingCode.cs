namespace Foramen.Field.Homes;

/// <summary>A code to pair one device by.</summary>
/// <param name="Code">To type.</param>
/// <param name="Until">Until when it is good.</param>
/// <param name="Address">To open.</param>
/// <param name="QrSvg">The same address, to scan.</param>
public sealed record PairingCode(string Code, DateTimeOffset Until, string Address, string QrSvg);
