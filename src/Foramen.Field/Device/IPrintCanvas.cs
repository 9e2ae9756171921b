namespace Foramen.Field.Device;

/// <summary>Draws the engine's pixels on a canvas element.</summary>
public interface IPrintCanvas
{
    /// <summary>Makes ready; await before the first drawing.</summary>
    Task PrepareAsync();

    /// <summary>One byte a pixel, rows downwards, sRGB grey.</summary>
    /// <param name="canvasId">The element's id.</param>
    /// <param name="width">Pixels in a row.</param>
    /// <param name="height">Rows.</param>
    /// <param name="greys">width × height bytes.</param>
    void DrawGrey(string canvasId, int width, int height, Span<byte> greys);
}
