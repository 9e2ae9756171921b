using Foramen.Engine.Bath;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath.PublishedValues;

/// <summary>Fixer capacity and time: US Navy NAVEDTRA 14209 and US War Department TM 11-2323; silver worked by hand.</summary>
public class FixerTests
{
    // 200 sheets of 8 × 10 in per US gallon (3.785411784 l): 52.8 to the litre, 2.73 m²/l.
    [Fact]
    [Source("navedtra-14209")]
    public void Navy_capacity()
    {
        var perLitre = 200 / 3.785411784;
        var area = Cm2(20.32 * 25.4);
        Assert.Equal(52.8, perLitre, 0.05);
        Assert.Equal(2.73, perLitre * area.SquareMetres, 0.005);
        Assert.Equal(2.73, FixerLimits.FirstBath.SquareMetresPerLitre);

        // A gallon of fresh fixer takes 200 such sheets; the area is what ends it where little silver comes.
        Assert.Equal(200, FixerBath.Fill(Ml(3785.411784), FixerLimits.From(2, 200 * area.SquareMetres / 3.785411784)).SheetsLeft(area, 0.001));
    }

    // The two rules agree: 2.73 m²/l at 1.4 g/m², six tenths undeveloped, is 2.3 g/l, near the 2 g/l of general use.
    [Fact]
    [Source("navedtra-14209", Basis.Worked)]
    public void Area_and_silver_agree()
        => Assert.Equal(2.3, SilverCoating.Usual.GramsInto(Cm2(27_300), 0.6), 0.05);

    // TM 11-2323: twice the time for each 18 °F (10 °C) below 68 °F.
    [Theory]
    [InlineData(68, 240)]
    [InlineData(59, 339)]
    [InlineData(50, 480)]
    [InlineData(41, 679)]
    [InlineData(77, 240)]
    [Source("tm-11-2323")]
    public void Time_in_the_cold(double fahrenheit, double seconds)
        => Assert.Equal(seconds, FixingTime.At(S(240), F(fahrenheit)).Seconds, 0.5);

    // Half-plate 199.2 cm², 1.4 g/m², seven tenths undeveloped: 19.52 mg; in 300 ml 65.1 mg/l; 0.5 g/l after 7.68 sheets, 2 g/l after 30.7.
    [Fact]
    [Source("chemistry-textbook", "mass over volume", Basis.Worked)]
    public void Silver_of_half_plates()
    {
        var silver = SilverCoating.Usual.GramsInto(Cm2(199.2), 0.7);
        Assert.Equal(0.01952, silver, 0.000005);
        var bath = FixerBath.Fill(Ml(300), FixerLimits.From(0.5, 100)).AfterSheet(Cm2(199.2), silver);
        Assert.Equal(0.0651, bath.SilverGramsPerLitre, 0.00005);
        Assert.Equal(7, FixerBath.Fill(Ml(300), FixerLimits.From(0.5, 100)).SheetsLeft(Cm2(199.2), silver));
        Assert.Equal(30, FixerBath.Fill(Ml(300), FixerLimits.From(2, 100)).SheetsLeft(Cm2(199.2), silver));
    }

    // Refreshing a tenth after each: the limit is 9 × 65.1 mg/l = 0.586 g/l, and 0.5 g/l is passed after 18.2 sheets.
    [Fact]
    [Source("difference-equations", Basis.Worked)]
    public void Refreshing_a_tenth_is_not_for_ever()
    {
        var bath = FixerBath.Fill(Ml(300), FixerLimits.From(0.5, 100));
        var after = new List<double>();
        for (var n = 1; n <= 200; n++)
        {
            bath = bath.AfterSheet(Cm2(199.2), 0.019522).Refreshed(0.1);
            after.Add(bath.SilverGramsPerLitre);
        }

        Assert.True(after[17] < 0.5 && after[18] > 0.5);
        Assert.Equal(0.586, after[199], 0.0005);
    }
}
