namespace Foramen.Storage.Pictures;

/// <summary>How far a picture has come.</summary>
/// <param name="Offset">Bytes that are here.</param>
/// <param name="Complete">Whether it is whole and is what its hash says.</param>
public sealed record PictureProgress(long Offset, bool Complete);
