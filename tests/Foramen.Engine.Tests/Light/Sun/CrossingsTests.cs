using CsCheck;
using Foramen.Engine.Light;

namespace Foramen.Engine.Tests.Light;

/// <summary>Where waves of known zeros cross; a tenth of a second is close enough.</summary>
public class CrossingsTests
{
    private const double TenthOfASecond = 0.1 / 86400;

    [Fact]
    public void A_wave_crosses_where_its_sine_does() => Gen.Select(Gen.Double[0.05, 0.45], Gen.Int[1, 5]).Sample((shift, days) =>
    {
        var found = Crossings.Of(day => Math.Sin(2 * Math.PI * (day - shift)), 0, days);
        Assert.Equal(2 * days, found.Count);
        Assert.Equal(found.OrderBy(hit => hit.At), found);
        Assert.All(found, hit =>
        {
            Assert.Equal(0, Math.IEEERemainder(hit.At - shift, 0.5), TenthOfASecond);
            Assert.Equal(Math.Cos(2 * Math.PI * (hit.At - shift)) > 0, hit.Rising);
        });
    });

    // A parabola that shows itself for two minutes, between two looks of a quarter of an hour; and the same upside down.
    [Theory]
    [InlineData(1, 7.3)]
    [InlineData(-1, 7.3)]
    [InlineData(1, -7.3)]
    [InlineData(-1, -7.3)]
    public void A_summit_of_two_minutes_is_not_missed(int sign, double minutes)
    {
        const double Minute = 1.0 / 1440;
        var top = 0.5 + (minutes * Minute);
        var found = Crossings.Of(day => sign * ((Minute * Minute) - ((day - top) * (day - top))), 0, 1);
        Assert.Equal(2, found.Count);
        Assert.Equal((top - Minute, sign > 0), (found[0].At, found[0].Rising), Near);
        Assert.Equal((top + Minute, sign < 0), (found[1].At, found[1].Rising), Near);
    }

    // A day in quarters of an hour is 97 looks, and a quarter of an hour halved to a tenth of a second 15; what has no summit is not searched for one.
    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void What_only_rises_or_falls_is_looked_at_no_oftener_than_that(int sign)
    {
        var looks = 0;
        var found = Assert.Single(Crossings.Of(
            day =>
            {
                looks++;
                return sign * (Math.Exp(day) - 1.5);
            },
            0,
            1));
        Assert.Equal((Math.Log(1.5), sign > 0), found, Near);
        Assert.InRange(looks, 97, 97 + 15);
    }

    [Fact]
    public void What_stays_on_one_side_does_not_cross()
    {
        Assert.Empty(Crossings.Of(day => 1.001 + Math.Sin(day * 20), 0, 1));
        Assert.Empty(Crossings.Of(day => -1.001 + Math.Sin(day * 20), 0, 1));
    }

    [Fact]
    public void A_short_search_finds_too()
    {
        var found = Assert.Single(Crossings.Of(day => 0.0003 - day, 0, 0.0007));
        Assert.Equal(0.0003, found.At, TenthOfASecond);
        Assert.False(found.Rising);
    }

    // Not even a height that is no number keeps it busy.
    [Fact]
    public void A_height_that_is_no_number_ends() => Assert.Empty(Crossings.Of(_ => double.NaN, 0, 10));

    private static bool Near((double At, bool Rising) one, (double At, bool Rising) other)
        => one.Rising == other.Rising && Math.Abs(one.At - other.At) <= TenthOfASecond;
}
