using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath.PublishedValues;

/// <summary>Serial dilution (any chemistry textbook), and J. Crank, <i>The Mathematics of Diffusion</i>, 1975 (series from memory).</summary>
public class WashingTests
{
    // (c/(c + W))^n.
    [Theory]
    [InlineData(10, 500, 1, 1.961e-2)]
    [InlineData(10, 500, 2, 3.845e-4)]
    [InlineData(10, 500, 4, 1.478e-7)]
    [InlineData(8, 250, 3, 2.981e-5)]
    [InlineData(8, 150, 2, 2.564e-3)]
    [InlineData(20, 250, 4, 3.011e-5)]
    [InlineData(8, 1000, 1, 7.94e-3)]
    [InlineData(8, 500, 2, 2.48e-4)]
    [InlineData(8, 250, 4, 9.24e-7)]
    [Source("chemistry-textbook", "serial dilution", Basis.Worked)]
    public void Serial_dilution(double kept, double filling, int changes, double left)
        => Assert.Equal(1, FillAndDump.Left(Ml(kept), Ml(filling), changes) / left, 0.001);

    // M. Torzynski 2004: 10 ml that hold 600 mg, made up to 500 ml: 1.2 g/l.
    [Fact]
    [Source("torzynski-2004")]
    public void Six_hundred_milligrams()
        => Assert.Equal(1.2, 0.6 / 0.010 * FillAndDump.Left(Ml(10), Ml(490), 1), 1e-9);

    // 0.014 g/m² from 100 g/l: coated paper holds 0.08 l/m², fibre 0.3 l/m² (assumptions); ln(ratio)/ln(per change).
    [Theory]
    [InlineData(0.08, 8, 1.0, 1.83, 2)]
    [InlineData(0.30, 10, 1.0, 2.35, 3)]
    [InlineData(0.08, 8, 0.8, 4.25, 5)]
    [InlineData(0.08, 8, 0.5, 9.6, 10)]
    [Source("chemistry-textbook", "serial dilution", Basis.Worked)]
    public void Changes_for_a_residue(double litresPerSquareMetre, double kept, double equilibrium, double theory, int changes)
    {
        var target = 0.014 / (100 * litresPerSquareMetre);
        Assert.Equal(theory, FillAndDump.ChangesInTheory(target, Ml(kept), Ml(250), equilibrium), 0.05);
        Assert.Equal(changes, FillAndDump.ChangesNeeded(target, Ml(kept), Ml(250), equilibrium));
    }

    [Theory]
    [InlineData(0.05, 0.74769)]
    [InlineData(0.1, 0.64318)]
    [InlineData(0.2, 0.49591)]
    [InlineData(0.5, 0.23605)]
    [InlineData(1, 0.06874)]
    [InlineData(2, 0.00583)]
    [InlineData(3, 0.00049)]
    [Source("crank-1975", "sec. 4.3", Basis.Memory)]
    public void Crank(double f, double left)
    {
        var layer = WashingOut.FromLayer(Length.FromMillimetres(0.1), 1e-10);
        Assert.Equal(left, layer.Left(S(f * 1e-8 / 1e-10)), 0.000006);
    }

    // 4l²/(π²D), and the time to a thousandth.
    [Theory]
    [InlineData(30, 4e-10, 0.91, 6)]
    [InlineData(50, 4e-10, 2.5, 17)]
    [InlineData(200, 1e-10, 162, 1086)]
    [InlineData(250, 1e-10, 253, 1697)]
    [Source("crank-1975", "sec. 4.3", Basis.Memory)]
    public void Time_constants(double micrometres, double diffusivity, double constant, double toThousandth)
    {
        var layer = WashingOut.FromLayer(Length.FromMillimetres(micrometres / 1000), diffusivity);
        Assert.Equal(constant, layer.TimeConstant.Seconds, constant < 10 ? 0.05 : 0.6);
        Assert.InRange(0.001, layer.Left(S(toThousandth + 0.6)), layer.Left(S(toThousandth - 0.6)));
    }

    // TM 11-2323: twice the washing time at 50 °F; four times at 35 °F, where the doubling per 18 °F gives 3.6.
    [Fact]
    [Source("tm-11-2323")]
    public void Cold_water()
    {
        double Each(double fahrenheit) => WashPlan.For(SheetBase.Coated, Cm2(129), Ml(5), Ml(250), F(fahrenheit)).EachChange.Seconds;
        Assert.Equal(2, Each(50) / Each(68), 1e-9);
        Assert.Equal(4, Each(35) / Each(68), 0.5);
    }

    // TM 11-2323: three or four changes of two minutes for use at once. Usual practice: coated paper 2 to 4 min, fibre 20 to 60 min.
    [Fact]
    [Source("tm-11-2323")]
    [Source("common-practice")]
    public void Plans_agree_with_practice()
    {
        var coated = WashPlan.For(SheetBase.Coated, Cm2(129), Ml(8), Ml(250), C(20));
        Assert.InRange(coated.Advised, 3, 6);
        Assert.InRange(coated.Time.Seconds, 60, 240);
        var fibre = WashPlan.For(SheetBase.Fibre, Cm2(129), Ml(8), Ml(250), C(20));
        Assert.InRange(fibre.Time.Seconds, 20 * 60, 110 * 60);
    }
}
