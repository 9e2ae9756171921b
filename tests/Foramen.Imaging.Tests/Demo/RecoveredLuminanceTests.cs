using Foramen.Demo.Render;
using Foramen.Engine.Light;
using Foramen.Engine.Scene;
using Foramen.Imaging.Tests.TestKit;

namespace Foramen.Imaging.Tests.Demo;

/// <summary>
/// The luminances of the demo's scene are known before any camera: the truth file is written by the renderer, whose transfer function and exposure relation are its own.
/// </summary>
public sealed class RecoveredLuminanceTests
{
    private const double ThirdOfStop = 1 / 3.0;

    [Fact]
    public void Tones_lie_within_a_third_of_a_stop_of_the_truth_over_six_stops()
    {
        var photo = PhotographMeter.AnchorByExposure(PhotographReader.Read(DemoFiles.Photograph));
        var white = photo.WhiteLuminance!.Value.CandelasPerSquareMetre;
        var exact = new List<double>();
        foreach (var (region, truth, rgb) in DemoFiles.Truth())
        {
            var tone = ToneReader.Read(region.Name, Rendering.Mid, Rectangle(region), photo, PaperSight.Eye);
            var error = Math.Log2(tone.Luminance.CandelasPerSquareMetre / truth);
            if (rgb.Any(channel => channel >= white))
            {
                Assert.Equal(LuminanceLimit.AtLeast, tone.ReadingLimit);
            }

            if (tone.ReadingLimit == LuminanceLimit.AtLeast)
            {
                Assert.True(error < ThirdOfStop, $"{region.Name}: at least {tone.Luminance} but in truth {truth} cd/m².");
                continue;
            }

            Assert.True(Math.Abs(error) < ThirdOfStop, $"{region.Name}: {tone.Luminance}, in truth {truth} cd/m², {error:0.00} stops off.");
            exact.Add(truth);
        }

        Assert.True(Math.Log2(exact.Max() / exact.Min()) >= 6, $"Only from {exact.Min()} to {exact.Max()} cd/m².");
        Assert.True(exact.Count >= 6, $"Only {exact.Count} tones are exact.");
    }

    [Fact]
    public void A_small_rendering_has_the_luminances_of_the_large_one()
    {
        var picture = Picture.Of(Shot.All[0], 1008, 756, 2);
        foreach (var (region, truth, _) in DemoFiles.Truth())
        {
            // A region of two columns on a steep edge falls on other parts of it when the pixels are four times as large.
            if ((region.Right - region.Left) * picture.Width < 4)
            {
                continue;
            }

            // Fine texture falls otherwise on larger pixels: a few per cent.
            var ratio = picture.Mean(region).Luminance / truth;
            Assert.True(ratio is > 0.94 and < 1.06, $"{region.Name}: {ratio:0.000} of the truth.");
        }
    }

    [Fact]
    public void Blown_and_blocked_pixels_bound_the_truth_and_the_others_are_near_it()
    {
        var (width, height) = (504, 378);
        var shot = Shot.All[0];
        var picture = Picture.Of(shot, width, height, 2);
        var map = LuminanceMap.AsPaperSees(PhotographMeter.AnchorByExposure(new ScenePhotograph(width, height, picture.Develop(shot.WhiteLuminance), Facts(shot))), PaperSight.Eye);
        var (blown, near, exact) = (0, 0, 0);
        for (var row = 0; row < height; row++)
        {
            for (var column = 0; column < width; column++)
            {
                var (truth, pixel) = (picture[column, row].Luminance, map.At(column, row).CandelasPerSquareMetre);
                var clipped = picture[column, row].G >= shot.WhiteLuminance || picture[column, row].R >= shot.WhiteLuminance;
                blown += clipped ? 1 : 0;
                if (clipped)
                {
                    Assert.Equal(LuminanceLimit.AtLeast, map.LimitAt(column, row));
                }

                if (map.LimitAt(column, row) == LuminanceLimit.Exact)
                {
                    exact++;
                    near += Math.Abs(Math.Log2(pixel / truth)) < ThirdOfStop ? 1 : 0;
                }
            }
        }

        // Grain of a few codes is more than a third of a stop in the deepest shadows only.
        Assert.True(blown > 0, "Nothing is blown.");
        Assert.True(near > 0.93 * exact, $"{near} of {exact} exact pixels are near the truth.");
    }

    [Fact]
    public void A_smaller_decoding_has_about_the_luminances_of_the_whole_one()
    {
        var whole = PhotographMeter.AnchorByExposure(PhotographReader.Read(DemoFiles.Photograph));
        var small = PhotographMeter.AnchorByExposure(PhotographReader.Read(DemoFiles.Photograph, 500));
        var (wholeMap, smallMap) = (LuminanceMap.AsPaperSees(whole, PaperSight.Eye).ReducedTo(small.Width, small.Height), LuminanceMap.AsPaperSees(small, PaperSight.Eye));

        Assert.InRange(small.Width, 500, 1008);
        // The decoder averages codes, not light, so edges come out a little darker.
        Assert.InRange(Mean(smallMap) / Mean(wholeMap), 0.97, 1.01);
        var off = smallMap.Values.ToArray().Zip(wholeMap.Values.ToArray(), (a, b) => Math.Abs(Math.Log2(a / b))).Count(stops => stops > ThirdOfStop);
        Assert.True(off < 0.05 * smallMap.Values.Length, $"{off} of {smallMap.Values.Length} pixels are off.");
    }

    private static double Mean(LuminanceMap map) => map.Values.ToArray().Average();

    private static RectangleInPhotograph Rectangle(Region region)
        => RectangleInPhotograph.FromFractions(region.Left, region.Top, region.Right - region.Left, region.Bottom - region.Top);

    private static PhotographFacts Facts(Shot shot) => new()
    {
        ExposureTime = Engine.Quantities.Duration.FromSeconds(shot.Seconds),
        FNumber = Engine.Quantities.FNumber.FromValue(shot.FNumber),
        Speed = Engine.Quantities.CameraSpeed.FromIso(shot.Iso),
    };
}
