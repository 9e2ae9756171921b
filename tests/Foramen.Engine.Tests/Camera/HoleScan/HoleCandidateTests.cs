using CsCheck;
using Foramen.Engine.Camera;

namespace Foramen.Engine.Tests.Camera;

public sealed class HoleCandidateTests
{
    // An ellipse of half axes a and b has the area πab, and a circle of diameter 2√(ab) has it too.
    [Fact]
    public void An_ellipse_fills_itself_and_is_as_wide_as_its_circle() => Gen.Select(Gen.Double[1, 50], Gen.Double[0.1, 1]).Sample((axis, ratio) =>
    {
        var ellipse = Ellipse(0, 0, axis, ratio * axis);
        Assert.Equal(1, ellipse.Fill, 1e-12);
        Assert.Equal(2 * axis * Math.Sqrt(ratio), ellipse.Diameter, 1e-9);
    });

    // Six tenths of the length, nine tenths of the area.
    [Theory]
    [InlineData(0.61, 1, true)]
    [InlineData(0.59, 1, false)]
    [InlineData(1, 0.91, true)]
    [InlineData(1, 0.89, false)]
    [InlineData(0.5, 0.5, false)]
    public void Long_or_ragged_is_not_round(double ratio, double fill, bool round)
        => Assert.Equal(round, (Ellipse(0, 0, 10, 10 * ratio) with { Area = Math.PI * 100 * ratio * fill }).IsRound);

    [Fact]
    public void Six_tenths_and_nine_tenths_are_still_round()
        => Assert.True(new HoleCandidate(0, 0, 0.9 * (Math.PI * 10 * 6), 10, 6, 0, true, false).IsRound);

    // A plate of 100 pixels half across, round; what lies in it is of the other brightness and less than half as large.
    [Theory]
    [InlineData(0, 0, 20, false, true)]
    [InlineData(60, 60, 20, false, true)] // 85 off and 20 wide: under 150
    [InlineData(100, 90, 20, false, false)] // 135 off
    [InlineData(90, -100, 20, false, false)]
    [InlineData(0, 0, 20, true, false)]
    [InlineData(0, 0, 80, false, false)] // six tenths of the area
    public void A_plate_holds_its_hole(double x, double y, double axis, bool bright, bool holds)
        => Assert.Equal(holds, Ellipse(7, 9, 100, 100).Holds(Ellipse(7 + x, 9 + y, axis, axis) with { IsBright = bright }));

    private static HoleCandidate Ellipse(double x, double y, double longAxis, double shortAxis)
        => new(x, y, Math.PI * longAxis * shortAxis, longAxis, shortAxis, 0, true, false);
}
