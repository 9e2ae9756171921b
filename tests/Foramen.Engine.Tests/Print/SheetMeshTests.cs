using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print;

/// <summary>What is interpolated between exact places is what is exact, whatever the size of a cell: pixels of the whole cell's width, of several to a cell, and of cells of a few.</summary>
public sealed class SheetMeshTests
{
    public static TheoryData<string, int> Sheets { get; } = new MatrixTheoryData<string, int>(["flat", "thick", "curved", "shifted"], [17, 61, 203, 400]);

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Falloff_and_light_of_every_pixel_are_the_cameras(string kind, int pixels)
    {
        // The thick edge hides all light more than atan(0.4/0.5) = 38.7° off the axis; the sheet reaches to 45°.
        var camera = kind switch
        {
            "flat" => Flat(0.4, 50, 100, 20),
            "thick" => Flat(0.4, 50, 100, 20, 0.5),
            "curved" => Curved(0.4, 60, 45, 100, 20),
            _ => Flat(0.4, 50, 100, 20, 0, 12, -3),
        };
        var projection = SheetProjection.Of(camera, PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(60)), SheetFormat.Level);

        // Luminance grows across the photograph and down it, and is not known beyond its 30° to each side.
        var map = LuminanceMap.FromValues(8, 6, [.. Enumerable.Range(0, 48).Select(i => (i % 8) + (3 * (i / 8)) + 2f)]);
        var image = SheetImage.Make(map, projection, pixels, cancellation: TestContext.Current.CancellationToken);
        Assert.False(image.Known.IsEmpty);
        var line = new float[image.Grid.Width];
        var onAxis = camera.AxisFactor;
        for (var row = 0; row < image.Grid.Height; row++)
        {
            image.ReadFalloff(row, line);
            for (var column = 0; column < line.Length; column++)
            {
                var (x, y) = (image.Grid.XMillimetres(column), image.Grid.YMillimetres(row));
                var falloff = projection.RelativeIlluminance(x, y);
                Assert.Equal(falloff, line[column], 0.0012);
                var seen = projection.Locate(x, y, out var photoX, out var photoY) && photoX is >= 0 and <= 1 && photoY is >= 0 and <= 1;
                Assert.Equal(seen, image.At(column, row) is not null);
                if (seen)
                {
                    var luminance = Math.Clamp(photoX * 8, 0.5, 7.5) + (3 * Math.Clamp(photoY * 6, 0.5, 5.5));
                    Assert.Equal(falloff * onAxis * luminance, image.At(column, row)!.Value.Lux, (0.0012 * onAxis * luminance) + (0.01 * onAxis));
                }
                else
                {
                    Assert.Equal(0, image.Lux[(row * line.Length) + column]);
                }
            }
        }
    }
}
