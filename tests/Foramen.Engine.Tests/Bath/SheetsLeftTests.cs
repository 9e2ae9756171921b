using CsCheck;
using Foramen.Engine.Bath;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath;

public class SheetsLeftTests
{
    // A bottle that hardly weakens ends where handbooks end: 0.1 m²/l in 300 ml are 300 cm², two sheets of 129 cm² lie within and the third goes in as well.
    [Fact]
    public void Where_nothing_is_known_any_more_it_ends()
    {
        var strong = DeveloperProfile.Paper with { KnownToSquareMetresPerLitre = 0.1, CapacitySquareMetresPerLitre = new(50, 50, 50) };
        var left = SheetsLeft.For(DeveloperBottle.Fill(strong, Ml(300), Ml(150)), new BottleHabit(Cm2(129), strong.ReferenceDensity, default, default));
        Assert.Equal((3, 3, 3, BottleEnd.Data), (left.Sheets.Low, left.Sheets.Middle, left.Sheets.High, left.End));
    }

    // 300 ml lose 40 ml a sheet; 150 ml must cover: after three sheets 180 ml are left, after four 140.
    [Fact]
    public void Where_the_liquid_does_not_cover_it_ends()
    {
        var left = SheetsLeft.For(DeveloperBottle.Fill(DeveloperProfile.Paper, Ml(300), Ml(150)), new BottleHabit(Cm2(10), D(0.1), Ml(40), default));
        Assert.Equal((4, 4, 4, BottleEnd.Volume), (left.Sheets.Low, left.Sheets.Middle, left.Sheets.High, left.End));
    }

    [Fact]
    public void What_is_renewed_with_every_sheet_has_no_end_in_sight()
    {
        var left = SheetsLeft.For(DeveloperBottle.Fill(DeveloperProfile.Paper, Ml(300), Ml(150)), new BottleHabit(Cm2(129), D(0.7), Ml(1), Ml(300)));
        Assert.Equal((SheetsLeft.Horizon, SheetsLeft.Horizon, BottleEnd.None), (left.Sheets.Low, left.Sheets.High, left.End));
    }

    [Fact]
    public void Each_sheet_that_goes_in_is_one_less() => Gen.Select(Gen.Double[50, 600], Gen.Double[0.1, 1.5], Gen.Double[0, 5]).Sample((area, density, lost) =>
    {
        var habit = new BottleHabit(Cm2(area), D(density), Ml(lost), default);
        var bottle = DeveloperBottle.Fill(DeveloperProfile.Paper, Ml(300), Ml(150));
        var before = SheetsLeft.For(bottle, habit);
        Assert.True(before.Sheets.Low <= before.Sheets.Middle && before.Sheets.Middle <= before.Sheets.High);
        if (before.Sheets.Low > 0 && before.Sheets.High < SheetsLeft.Horizon)
        {
            var after = SheetsLeft.For(habit.Next(bottle), habit);
            Assert.Equal((before.Sheets.Low - 1, before.Sheets.Middle - 1, before.Sheets.High - 1, before.End), (after.Sheets.Low, after.Sheets.Middle, after.Sheets.High, after.End));
        }
    });
}
