namespace Foramen.Storage;

/// <summary>An entry as it is kept.</summary>
/// <param name="Arrival">In which order it arrived.</param>
/// <param name="Line">Its line in UTF-8, without its end.</param>
public sealed record StoredLine(long Arrival, byte[] Line);
