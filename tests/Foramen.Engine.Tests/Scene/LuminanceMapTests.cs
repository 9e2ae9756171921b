using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene;

public class LuminanceMapTests
{
    private static readonly PaperSight BluePaper = PaperSight.Of(PaperSensitivity.BlueSensitive, LightColour.Noon.ToSpectrum());

    private static readonly PaperSight VariablePaper = PaperSight.Of(PaperSensitivity.VariableContrast, LightColour.Noon.ToSpectrum());

    private static readonly Gen<PaperSight> GenSight = Gen.Int[0, 2].Select(i => i switch { 0 => PaperSight.Eye, 1 => BluePaper, _ => VariablePaper });

    // Each pixel by the slow road: the transfer function, the colour matrix, the weights.
    [Fact]
    public void A_map_is_what_the_formulas_say_pixel_by_pixel() => Gen.Select(Photographs.WithinRange, GenSight).Sample((photo, sight) =>
    {
        var map = LuminanceMap.AsPaperSees(photo, sight);
        for (var i = 0; i < map.Values.Length; i++)
        {
            var codes = photo.Rgba.Span.Slice(4 * i, 3);
            var (red, green, blue) = RgbSpace.ToLinearSrgb(
                photo.Facts.Colour, SrgbTransfer.ToLinear(codes[0] / 255.0), SrgbTransfer.ToLinear(codes[1] / 255.0), SrgbTransfer.ToLinear(codes[2] / 255.0));
            Assert.Equal(1000 * Math.Max(0, (sight.Red * red) + (sight.Green * green) + (sight.Blue * blue)), map.Values[i], 0.001);
            Assert.Equal(LuminanceLimit.Exact, map.Limits[i]);
        }
    });

    [Fact]
    public void Twice_the_white_is_twice_every_luminance() => Gen.Select(Photographs.Any, GenSight).Sample((photo, sight) =>
    {
        var (once, twice) = (LuminanceMap.AsPaperSees(photo, sight), LuminanceMap.AsPaperSees(photo.Anchored(2000), sight));
        for (var i = 0; i < once.Values.Length; i++)
        {
            Assert.Equal(2 * once.Values[i], twice.Values[i], 0.001);
        }
    });

    [Fact]
    public void A_neutral_surface_is_as_bright_to_any_paper_as_to_the_eye() => Gen.Select(Gen.Byte[3, 253], GenSight, Gen.Enum<PhotographColour>())
        .Sample((code, sight, colour) =>
        {
            var photo = Photographs.Even(code, code, code, new PhotographFacts { Colour = colour }).Anchored();
            Assert.Equal(LuminanceMap.AsPaperSees(photo, PaperSight.Eye).Values[0], LuminanceMap.AsPaperSees(photo, sight).Values[0], 0.001);
        });

    [Fact]
    public void Brick_is_darker_and_sky_brighter_to_blue_sensitive_paper()
    {
        var brick = Photographs.Even(150, 80, 60).Anchored();
        var sky = Photographs.Even(120, 160, 220).Anchored();
        Assert.True(LuminanceMap.AsPaperSees(brick, BluePaper).Values[0] < LuminanceMap.AsPaperSees(brick, PaperSight.Eye).Values[0] / 2);
        Assert.True(LuminanceMap.AsPaperSees(sky, BluePaper).Values[0] > LuminanceMap.AsPaperSees(sky, PaperSight.Eye).Values[0] * 1.5);
    }

    [Theory]
    [InlineData(253, 253, 253, LuminanceLimit.Exact, LuminanceLimit.Exact)]
    [InlineData(100, 100, 254, LuminanceLimit.AtLeast, LuminanceLimit.AtLeast)]
    [InlineData(255, 100, 100, LuminanceLimit.AtLeast, LuminanceLimit.Exact)]
    [InlineData(2, 2, 2, LuminanceLimit.AtMost, LuminanceLimit.AtMost)]
    [InlineData(200, 100, 2, LuminanceLimit.Exact, LuminanceLimit.AtMost)]
    [InlineData(2, 3, 2, LuminanceLimit.Exact, LuminanceLimit.AtMost)]
    [InlineData(255, 0, 0, LuminanceLimit.AtLeast, LuminanceLimit.AtMost)]
    public void Blown_and_blocked_pixels_are_known(byte red, byte green, byte blue, LuminanceLimit eye, LuminanceLimit paper)
    {
        var photo = Photographs.Even(red, green, blue).Anchored();
        Assert.Equal(eye, LuminanceMap.AsPaperSees(photo, PaperSight.Eye).LimitAt(3, 2));
        Assert.Equal(paper, LuminanceMap.AsPaperSees(photo, BluePaper).LimitAt(3, 2));
    }

    [Fact]
    public void A_blocked_pixel_holds_the_bound_and_not_nothing()
        => Assert.Equal(
            1000 * SrgbTransfer.ToLinear(2 / 255.0),
            LuminanceMap.AsPaperSees(Photographs.Even(0, 0, 0).Anchored(), PaperSight.Eye).Values[0],
            1e-4);

    [Fact]
    public void Reducing_keeps_the_mean_at_any_size() => Gen.Select(Photographs.Any, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((photo, x, y) =>
    {
        var map = LuminanceMap.AsPaperSees(photo, PaperSight.Eye);
        var reduced = map.ReducedTo(1 + (int)(x * (map.Width - 1)), 1 + (int)(y * (map.Height - 1)));
        Assert.Equal(Mean(map), Mean(reduced), 1e-4 * (1 + Mean(map)));
    });

    [Fact]
    public void Reading_reduced_at_once_is_reading_and_then_reducing() => Gen.Select(Photographs.Any, GenSight, Gen.Int[1, 9]).Sample((photo, sight, factor) =>
    {
        var atOnce = LuminanceMap.AsPaperSees(photo, sight, factor);
        var afterwards = LuminanceMap.AsPaperSees(photo, sight).Reduced(factor);
        Assert.Equal((afterwards.Width, afterwards.Height), (atOnce.Width, atOnce.Height));
        Assert.True(atOnce.Values.SequenceEqual(afterwards.Values));
        Assert.True(atOnce.Limits.SequenceEqual(afterwards.Limits));
    });

    [Fact]
    public void A_mean_lies_between_its_parts() => Gen.Select(Photographs.Any, Gen.Int[2, 9]).Sample((photo, factor) =>
    {
        var map = LuminanceMap.AsPaperSees(photo, PaperSight.Eye);
        foreach (var value in map.Reduced(factor).Values)
        {
            Assert.InRange(value, Min(map) * 0.9999f, Max(map) * 1.0001f);
        }
    });

    // By hand, a 3 × 1 map to two cells: each covers one and a half pixels.
    [Fact]
    public void Cells_share_their_border_pixels()
    {
        var reduced = LuminanceMap.FromValues(3, 1, [3, 6, 12]).ReducedTo(2, 1);
        Assert.Equal(4, reduced.Values[0], 1e-5);
        Assert.Equal(10, reduced.Values[1], 1e-5);
    }

    [Fact]
    public void A_map_is_read_by_column_and_row_and_reduced_either_way()
    {
        var map = LuminanceMap.FromValues(3, 2, [1, 2, 3, 4, 5, 6]);
        Assert.Equal([1.0, 3, 4, 5], new[] { (0, 0), (2, 0), (0, 1), (1, 1) }.Select(at => map.At(at.Item1, at.Item2).CandelasPerSquareMetre));
        Assert.Equal([2.5f, 3.5f, 4.5f], map.ReducedTo(3, 1).Values.ToArray());
        Assert.Equal([2f, 5f], map.ReducedTo(1, 2).Values.ToArray());
        Assert.Same(map, map.ReducedTo(3, 2));
    }

    // Three rows to two: the blocked middle one gives half of itself to each. Code 18 has ten times the light of the blocked one's bound, of which half is a twentieth.
    [Fact]
    public void A_blocked_row_counts_by_the_part_of_it()
    {
        var photo = Photographs.FromPixels(1, 3, (_, y) => y == 1 ? ((byte)0, (byte)0, (byte)0) : ((byte)18, (byte)18, (byte)18));
        Assert.Equal([LuminanceLimit.Exact, LuminanceLimit.Exact], LuminanceMap.AsPaperSees(photo.Anchored(), PaperSight.Eye).ReducedTo(1, 2).Limits.ToArray());
    }

    [Fact]
    public void Any_blown_part_makes_a_mean_at_least()
    {
        var photo = Photographs.FromPixels(4, 4, (x, y) => x == 0 && y == 0 ? ((byte)255, (byte)255, (byte)255) : ((byte)90, (byte)90, (byte)90));
        var reduced = LuminanceMap.AsPaperSees(photo.Anchored(), PaperSight.Eye).Reduced(2);
        Assert.Equal(
            [LuminanceLimit.AtLeast, LuminanceLimit.Exact, LuminanceLimit.Exact, LuminanceLimit.Exact],
            reduced.Limits.ToArray());
    }

    [Theory]
    [InlineData(3, LuminanceLimit.AtMost)]
    [InlineData(90, LuminanceLimit.Exact)]
    public void A_blocked_part_counts_only_beside_dark_ones(byte beside, LuminanceLimit limit)
    {
        var photo = Photographs.FromPixels(2, 2, (x, _) => x == 0 ? ((byte)0, (byte)0, (byte)0) : (beside, beside, beside));
        Assert.Equal(limit, LuminanceMap.AsPaperSees(photo.Anchored(), PaperSight.Eye).Reduced(2).LimitAt(0, 0));
    }

    [Fact]
    public void Shares_of_limits_are_counted()
    {
        var photo = Photographs.FromPixels(4, 1, (x, _) => x switch
        {
            0 => ((byte)255, (byte)255, (byte)255),
            1 => ((byte)0, (byte)1, (byte)2),
            _ => ((byte)90, (byte)90, (byte)90),
        });
        var map = LuminanceMap.AsPaperSees(photo.Anchored(), PaperSight.Eye);
        Assert.Equal((0.25, 0.25, 0.5), (Share(LuminanceLimit.AtLeast), Share(LuminanceLimit.AtMost), Share(LuminanceLimit.Exact)));

        double Share(LuminanceLimit limit) => map.Limits.ToArray().Count(each => each == limit) / (double)(map.Width * map.Height);
    }

    [Fact]
    public void A_photograph_without_exposure_is_refused_and_told_what_would_do()
        => Assert.Contains(
            "meter reading",
            Assert.Throws<RefusalException>(() => LuminanceMap.AsPaperSees(Photographs.Even(1, 2, 3), PaperSight.Eye)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Maps_of_nonsense_are_refused()
    {
        Assert.Throws<RefusalException>(() => LuminanceMap.FromValues(2, 2, [1, 2, 3]));
        Assert.Throws<RefusalException>(() => LuminanceMap.FromValues(1, 2, [1, float.NaN]));
        Assert.Throws<RefusalException>(() => LuminanceMap.FromValues(1, 2, [1, -1]));
        Assert.Throws<RefusalException>(() => LuminanceMap.FromValues(0, 2, []));
        var map = LuminanceMap.FromValues(2, 1, [1, 2]);
        Assert.Throws<RefusalException>(() => map.At(2, 0));
        Assert.Throws<RefusalException>(() => map.Reduced(0));
        Assert.Throws<RefusalException>(() => map.ReducedTo(3, 1));
        Assert.Contains("height", Assert.Throws<RefusalException>(() => map.ReducedTo(1, 2)).Message, StringComparison.Ordinal);
        Assert.Contains("row", Assert.Throws<RefusalException>(() => map.At(0, 1)).Message, StringComparison.Ordinal);
        Assert.Contains("height", Assert.Throws<RefusalException>(() => LuminanceMap.FromValues(2, 0, [])).Message, StringComparison.Ordinal);
        Assert.Contains("has 5 values; 2 × 3 are 6", Assert.Throws<RefusalException>(() => LuminanceMap.FromValues(2, 3, [1, 2, 3, 4, 5])).Message, StringComparison.Ordinal);
    }

    private static double Mean(LuminanceMap map) => map.Values.ToArray().Average(value => (double)value);

    private static float Min(LuminanceMap map) => map.Values.ToArray().Min();

    private static float Max(LuminanceMap map) => map.Values.ToArray().Max();
}
