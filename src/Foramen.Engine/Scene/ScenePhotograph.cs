using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>
/// A decoded photograph of the scene: 8-bit RGBA codes in rows from the top, turned upright, with the luminance that
/// full code stands for once it is known. Decoders (server, browser) fill it; the rooms only read it.
/// </summary>
public sealed record ScenePhotograph
{
    /// <summary>A decoded photograph.</summary>
    /// <param name="width">Columns, pixels.</param>
    /// <param name="height">Rows, pixels.</param>
    /// <param name="rgba">Codes, 4 bytes a pixel in the order R, G, B, A; alpha is ignored.</param>
    /// <param name="facts">What the file says of how it was taken.</param>
    /// <exception cref="RefusalException">The buffer does not hold width × height pixels.</exception>
    public ScenePhotograph(int width, int height, ReadOnlyMemory<byte> rgba, PhotographFacts facts)
    {
        Guard.Within(width, 1, 65535, "the photograph's width", "pixels");
        Guard.Within(height, 1, 65535, "the photograph's height", "pixels");
        if (rgba.Length != (long)width * height * 4)
        {
            throw new RefusalException($"The photograph holds {rgba.Length} bytes; {width} × {height} pixels need {(long)width * height * 4}.");
        }

        Width = width;
        Height = height;
        Rgba = rgba;
        Facts = facts;
    }

    /// <summary>Columns, pixels.</summary>
    public int Width { get; }

    /// <summary>Rows, pixels.</summary>
    public int Height { get; }

    /// <summary>Codes, 4 bytes a pixel: R, G, B, and an alpha that is ignored.</summary>
    public ReadOnlyMemory<byte> Rgba { get; }

    /// <summary>What the file says of how it was taken.</summary>
    public PhotographFacts Facts { get; }

    /// <summary>
    /// Luminance that linear 1.0 (code 255) stands for: from the facts, or from one meter reading that anchors the photograph.
    /// Null while neither is there; then no absolute luminance may be read from it.
    /// </summary>
    public Luminance? WhiteLuminance { get; init; }
}
