using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene;

/// <summary>Which pixels an area of a photograph takes in and what they make together, counted by hand.</summary>
public class PhotographAreaTests
{
    // One per cent of 400 across: 2 pixels to each side, 13 in all; three across at least; cut off at the border.
    [Theory]
    [InlineData(400, 300, 0.5, 0.5, "148:200-201 149:199-202 150:198-203 151:199-202 152:200-201")]
    [InlineData(20, 20, 0.5, 0.5, "9:9-12 10:9-12 11:9-12")]
    [InlineData(20, 20, 1, 1, "18:18-20 19:18-20")]
    [InlineData(20, 20, 0, 0, "0:0-2 1:0-2")]
    [InlineData(600, 2, 0.5, 0, "0:297-304 1:298-303")]
    public void A_point_is_a_disc(int width, int height, double x, double y, string runs)
        => Assert.Equal(runs, Runs(PointInPhotograph.FromFractions(x, y), width, height));

    // Nearest whole pixels, one at least.
    [Theory]
    [InlineData(0.2, 0.25, 0.4, 0.5, "1:2-6 2:2-6")]
    [InlineData(0.999, 0, 0.001, 0.01, "0:9-10")]
    [InlineData(0, 0.999, 0.04, 0.001, "3:0-1")]
    public void A_rectangle_is_whole_pixels(double left, double top, double width, double height, string runs)
        => Assert.Equal(runs, Runs(RectangleInPhotograph.FromFractions(left, top, width, height), 10, 4));

    [Fact]
    public void Too_high_a_rectangle_is_refused_by_its_height()
        => Assert.Contains("height", Assert.Throws<RefusalException>(() => RectangleInPhotograph.FromFractions(0, 0, 0.5, 1.5)).Message, StringComparison.Ordinal);

    // 13 pixels of a disc: 4 blocked, 5 grey, 4 blown in red alone, which is 0.2126 of white and darker than the grey. Blocked stands below and blown above, whatever its own
    // value, so the seventh is grey; by value it would be red.
    [Fact]
    public void A_bound_stands_outside_all_exact_values()
    {
        var places = new Dictionary<(int X, int Y), int>();
        PointInPhotograph.FromFractions(0.5, 0.5).ForEachRun(400, 300, (row, from, to) =>
        {
            for (var column = from; column < to; column++)
            {
                places.Add((column, row), places.Count);
            }
        });
        var photo = Photographs.FromPixels(400, 300, (x, y) => !places.TryGetValue((x, y), out var place) ? Grey(90) : place < 4 ? Grey(0) : place < 9 ? Grey(200) : ((byte)255, (byte)0, (byte)0));
        var reading = AreaReading.Of(photo, PointInPhotograph.FromFractions(0.5, 0.5), PaperSight.Eye);
        Assert.Equal(LuminanceLimit.Exact, reading.Limit);
        Assert.Equal(SrgbTransfer.ToLinear(200 / 255.0), reading.Value, 1e-5);
    }

    // Half is blocked, which holds at most the light of code 2: beside code 3 that is more than a tenth, beside code 90 nothing. Two blown pixels are as blown as one.
    [Theory]
    [InlineData(0, 3, LuminanceLimit.AtMost)]
    [InlineData(0, 90, LuminanceLimit.Exact)]
    [InlineData(90, 90, LuminanceLimit.Exact)]
    [InlineData(255, 90, LuminanceLimit.AtLeast)]
    [InlineData(255, 255, LuminanceLimit.AtLeast)]
    public void A_mean_is_a_bound_where_its_parts_matter(byte left, byte right, LuminanceLimit limit)
    {
        var photo = Photographs.FromPixels(2, 1, (x, _) => Grey(x == 0 ? left : right));
        var reading = AreaReading.Of(photo, RectangleInPhotograph.FromFractions(0, 0, 1, 1), PaperSight.Eye);
        Assert.Equal(limit, reading.Limit);
        double Light(byte code) => SrgbTransfer.ToLinear(Math.Max((byte)2, code) / 255.0);
        Assert.Equal((Light(left) + Light(right)) / 2, reading.Value, 1e-5);
    }

    private static (byte Red, byte Green, byte Blue) Grey(byte code) => (code, code, code);

    private static string Runs(PhotographArea area, int width, int height)
    {
        var runs = new List<string>();
        area.ForEachRun(width, height, (row, from, to) => runs.Add($"{row}:{from}-{to}"));
        return string.Join(' ', runs);
    }
}
