using System.CommandLine;
using Foramen.Cli.Kit;
using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Cli.Options;

/// <summary>Options that mean the same on every verb.</summary>
internal static class CommonOptions
{
    public static Option<bool> Json() => new("--json") { Description = "Write one JSON document (schema in docs/schemas) instead of words." };

    public static Option<string?> Light() => new("--light")
    {
        Description = "Colour of the light: lamp, low sun, noon, overcast, open shade, blue shade, or a temperature such as 5600 K. The meter sees green, the paper blue: up to two stops apart.",
        HelpName = "COLOUR",
    };

    public static Option<double?> MeterConstant() => new("--meter-k")
    {
        Description = "Calibration constant K of the meter for reflected light (ISO 2720), 10.6 to 14.5; 12.5 where nothing is said.",
        HelpName = "K",
    };

    public static LightColour LightOf(string? text) => text is null ? LightColour.Noon : LightColour.Find(text);

    public static LightMeter MeterOf(double? k) => k is { } constant
        ? new LightMeter(MeterConstants.Usual with { Reflected = constant })
        : LightMeter.Usual;

    public static PhotographicPaper PaperOf(string path) => FromFile(path, () => KitFile.Paper(path).ToPaper());

    public static PinholeCamera CameraOf(string path) => FromFile(path, () => KitFile.Camera(path).ToCamera());

    public static PrintMask MaskOf(string path) => FromFile(path, () => KitFile.Mask(path).ToMask());

    private static T FromFile<T>(string path, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (RefusalException refusal) when (!refusal.Message.Contains(path, StringComparison.Ordinal))
        {
            throw new RefusalException($"{path}: {refusal.Message}", refusal);
        }
    }
}
