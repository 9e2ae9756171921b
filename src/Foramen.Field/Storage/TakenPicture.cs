namespace Foramen.Field.Storage;

/// <summary>A picture, kept whole on the device and decoded small for the engine.</summary>
/// <param name="ContentHash">SHA-256 of the file.</param>
/// <param name="MediaType">Its media type.</param>
/// <param name="File">The file itself, for its EXIF.</param>
/// <param name="FullWidth">Width of the whole picture, upright, pixels.</param>
/// <param name="FullHeight">Height of the whole picture, upright, pixels.</param>
/// <param name="Width">Width of the decoded picture, pixels.</param>
/// <param name="Height">Height of the decoded picture, pixels.</param>
/// <param name="Rgba">The decoded picture: four bytes a pixel, rows downwards, sRGB.</param>
public sealed record TakenPicture(
    string ContentHash, string MediaType, byte[] File, int FullWidth, int FullHeight, int Width, int Height, byte[] Rgba);
