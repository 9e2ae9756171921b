using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Imaging;

namespace Foramen.Benchmarks;

/// <summary>The whole way from a photograph's file to a predicted print's, in memory: decode, luminances, sheet, spot, exposure, PNG.</summary>
internal sealed class PrintJob
{
    private readonly PinholeCamera camera = PinholeCamera.Create(
        "Box A", Hole.FromDiameter(Length.FromMillimetres(0.35)), Length.FromMillimetres(63), SheetSize.FromMillimetres(127, 102));

    private readonly CharacteristicCurve curve = LogisticCurve.FromRange(
        PaperKind.DirectPositive, Density.FromValue(0.08), Density.FromValue(1.98), 86, Density.FromValue(0.745), LuminousExposure.FromLuxSeconds(4.88));

    private readonly Length focalLength35 = Length.FromMillimetres(18);

    /// <summary>From the bytes of a 4:3 JPEG of known size to those of a PNG.</summary>
    public byte[] Run(byte[] jpeg, int width, int height, int printLongSide)
    {
        var projection = SheetProjection.Of(camera, PhotographField.FromFocalLength35(width, height, focalLength35));
        var decoded = PhotographReader.Read(jpeg, "bench.jpg", SheetImage.PhotographLongSide(projection, printLongSide));
        var photograph = decoded with { WhiteLuminance = Luminance.FromCandelasPerSquareMetre(12_000) };
        var light = LightColour.Noon.ToSpectrum();
        var scene = LuminanceMap.AsPaperSees(photograph, PaperSight.Of(PaperSensitivity.BlueSensitive, light));
        var spread = PointSpread.Of(camera, PaperLight.Of(light, PaperSensitivity.BlueSensitive));
        var image = SheetImage.Make(scene, projection, printLongSide, spread);
        var print = PredictedPrint.Expose(image, curve, PrintExposure.FromEffective(90, LuminousExposure.FromLuxSeconds(0.4)));
        var codes = new byte[print.Width * print.Height];
        print.WriteGrey8(codes);
        using var png = new MemoryStream();
        PrintWriter.EncodePng(png, codes, print.Width, print.Height);
        return png.ToArray();
    }
}
