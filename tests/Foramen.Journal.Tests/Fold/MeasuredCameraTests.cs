using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Tests.TestKit;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Fold;

public class MeasuredCameraTests
{
    private static readonly CameraDefined Box = new()
    {
        Camera = OneOfEach.Camera,
        Definition = new CameraDefinition
        {
            Name = "Box A", HoleDiameterMillimetres = 0.35, FocalDistanceMillimetres = 63, SheetWidthMillimetres = 127, SheetHeightMillimetres = 102,
        },
    };

    private static readonly HoleMeasured Hole = new() { Camera = OneOfEach.Camera, DiameterMillimetres = 0.36, DiameterSdMillimetres = 0.0036 };

    private static readonly ChamberMeasured Chamber = new() { Camera = OneOfEach.Camera, FocalDistanceMillimetres = 64, FocalDistanceSdMillimetres = 0.64 };

    [Fact]
    public void A_measured_hole_is_the_cameras_next_version()
    {
        var camera = Of(Box, Hole).Cameras.Find(OneOfEach.Camera)!;
        Assert.Equal(2, camera.Versions.Count);
        Assert.Equal(0.36, camera.Current.Body.HoleDiameterMillimetres);
        Assert.Equal(0.01, camera.Current.Body.HoleDiameterRelativeSd!.Value, 1e-12);
        Assert.Equal(0.35, camera.Versions[0].Body.HoleDiameterMillimetres);
        Assert.Equal("Box A", camera.Current.Body.Name);
    }

    // 1 % in diameter and 1 % in distance are √2 % in their ratio, and light goes with its square: 2·lg2(1 + 0.01·√2) = 0.0405 stops.
    [Fact]
    public void Exposure_counts_with_both_spreads_from_then_on()
    {
        var camera = Of(Box, Hole, Chamber).Cameras.Find(OneOfEach.Camera)!.Current.Body.ToCamera();
        Assert.Equal(64, camera.FocalDistance.Millimetres, 1e-9);
        var paper = PhotographicPaper.FromSpeed(
            "paper", PaperKind.DirectPositive, Density.FromValue(0.08), Density.FromValue(1.98), 86,
            ExposureIndex.Found(3, Duration.FromSeconds(120), LightColour.Noon, MeterConstants.Usual), PaperSensitivity.BlueSensitive, SchwarzschildFailure.Assumed);
        Assert.Equal(0.0405, ExposureErrors.Of(camera, paper, LightColour.Noon).Hole.Value, 1e-4);
        Assert.Equal(0.01, camera.TiltedTo(Angle.FromDegrees(5)).FocalDistanceRelativeSd, 1e-12);
    }

    // A spread wider than the engine takes is written down as the widest: five sixths of the diameter, nine tenths of the distance.
    [Fact]
    public void A_measured_spread_is_at_most_a_half()
    {
        var camera = Of(Box, Hole with { DiameterMillimetres = 0.3, DiameterSdMillimetres = 0.25 }, Chamber with { FocalDistanceMillimetres = 60, FocalDistanceSdMillimetres = 54 })
            .Cameras.Find(OneOfEach.Camera)!.Current.Body;
        Assert.Equal((0.5, 0.5), (camera.HoleDiameterRelativeSd, camera.FocalDistanceRelativeSd));
    }

    [Fact]
    public void A_measurement_of_no_camera_is_kept_and_said()
    {
        var ledger = Of(Hole);
        Assert.Equal(0, ledger.Cameras.Count);
        Assert.Contains("not described", Assert.Single(ledger.Unused).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mask_is_as_last_described()
    {
        MaskDefined Said(string text) => new()
        {
            Mask = OneOfEach.Mask, Definition = new MaskDefinition { Name = "title", Shape = "text", Text = text, WidthMillimetres = 30, DistanceMillimetres = 3 },
        };
        var mask = Of(Said("ONE"), Said("TWO")).Masks.Find(OneOfEach.Mask)!.Body.Definition;
        Assert.Equal("TWO", mask.Text);
        Assert.Equal(30, mask.ToMask().Width.Millimetres, 1e-12);
    }

    [Theory]
    [InlineData(0, 0.001)]
    [InlineData(0.3, -0.1)]
    [InlineData(double.NaN, 0.001)]
    public void Absurd_measurements_are_refused(double diameter, double sd)
        => Assert.Throws<RefusalException>(() => (Hole with { DiameterMillimetres = diameter, DiameterSdMillimetres = sd }).Check());

    private static Ledger Of(params EntryBody[] bodies)
        => Ledger.Of(EntrySet.Of(Phoned([.. bodies.Select((body, i) => ((double)i, body))])));
}
