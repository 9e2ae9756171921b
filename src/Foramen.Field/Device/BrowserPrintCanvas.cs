using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;

namespace Foramen.Field.Device;

/// <summary>Canvas drawing, by wwwroot/js/print-canvas.js.</summary>
[SupportedOSPlatform("browser")]
internal sealed partial class BrowserPrintCanvas : IPrintCanvas
{
    private const string Module = "print-canvas";

    private Task? loading;

    public Task PrepareAsync() => loading ??= JSHost.ImportAsync(Module, "../js/print-canvas.js");

    public void DrawGrey(string canvasId, int width, int height, Span<byte> greys)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(greys.Length, width * height);
        Grey(canvasId, width, height, greys);
    }

    [JSImport("drawGrey", Module)]
    private static partial bool Grey(string canvasId, int width, int height, [JSMarshalAs<JSType.MemoryView>] Span<byte> greys);
}
