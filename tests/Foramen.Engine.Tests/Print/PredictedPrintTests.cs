using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print;

public class PredictedPrintTests
{
    private static readonly PhotographField Wide = PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(90));
    private static readonly CharacteristicCurve Negative = Curve(PaperKind.NegativeWorking);
    private static readonly CharacteristicCurve Direct = Curve(PaperKind.DirectPositive);
    private static readonly SheetImage Steps = Image(Flat(0.35, 60, 100, 80));

    private static LogisticCurve Curve(PaperKind kind) => LogisticCurve.FromRange(
        kind, Density.FromValue(0.06), Density.FromValue(2.06), 110, Density.FromValue(0.66), LuminousExposure.FromLuxSeconds(2));

    // Grey steps over four orders of magnitude.
    private static SheetImage Image(PinholeCamera camera, PhotographField? field = null)
    {
        var values = new float[400 * 300];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = (float)(10 * Math.Pow(10, i % 400 / 40 * 0.4));
        }

        return SheetImage.Make(LuminanceMap.FromValues(400, 300, values), SheetProjection.Of(camera, field ?? Wide), 200);
    }

    private static LuminousExposure H(double luxSeconds) => LuminousExposure.FromLuxSeconds(luxSeconds);

    // The table against the curve itself: no pixel further off than a thousandth of density.
    [Fact]
    public void Density_is_the_curves_at_time_and_flash() => Gen.Select(Gen.Double[0, 5], Gen.Double[0, 2], Gen.Bool).Sample((lgSeconds, flash, direct) =>
    {
        var curve = direct ? Direct : Negative;
        var seconds = Math.Pow(10, lgSeconds);
        var densities = PredictedPrint.Expose(
            Steps, curve, PrintExposure.FromEffective(seconds, H(flash), false), new PrintLook { Side = PrintSide.AsProcessed }).Densities(TestContext.Current.CancellationToken);
        for (var i = 0; i < densities.Length; i += 97)
        {
            Assert.Equal(curve.DensityAt(H((Steps.Lux[i] * seconds) + flash)).Value, densities[i], 0.001);
        }
    }, iter: Samples.Of(30));

    // Through the hole the flash falls off as the image does: in the corner by cos⁴.
    [Fact]
    public void A_flash_through_the_hole_falls_off()
    {
        var camera = Flat(0.35, 60, 100, 80);
        var print = PredictedPrint.Expose(
            Steps, Negative, PrintExposure.FromEffective(0, H(2), true), new PrintLook { Side = PrintSide.AsProcessed });
        Assert.Equal(0.66, print.DensityAt(100, 80)!.Value.Value, 0.002);
        var corner = camera.FalloffStops(At(-49.75, 39.75)).Ratio;
        Assert.Equal(Negative.DensityAt(H(2 * corner)).Value, print.DensityAt(0, 0)!.Value.Value, 0.005);
        var even = PredictedPrint.Expose(
            Steps, Negative, PrintExposure.FromEffective(0, H(2), false), new PrintLook { Side = PrintSide.AsProcessed });
        Assert.Equal(0.66, even.DensityAt(0, 0)!.Value.Value, 0.002);
    }

    [Fact]
    public void More_light_darkens_a_negative_and_lightens_a_direct_positive() => Gen.Select(Gen.Double[0, 4], Gen.Double[0.05, 1]).Sample((lg, more) =>
    {
        float[] At(CharacteristicCurve curve, double lgSeconds) => PredictedPrint.Expose(
            Steps, curve, PrintExposure.FromEffective(Math.Pow(10, lgSeconds)), new PrintLook { Side = PrintSide.AsProcessed }).Densities();
        var (negative, longer) = (At(Negative, lg), At(Negative, lg + more));
        var (direct, directLonger) = (At(Direct, lg), At(Direct, lg + more));
        for (var i = 0; i < negative.Length; i += 51)
        {
            Assert.True(longer[i] >= negative[i] - 1e-5);
            Assert.True(directLonger[i] <= direct[i] + 1e-5);
        }
    }, iter: Samples.Of(20));

    [Fact]
    public void A_negatives_positive_mirrors_its_densities()
    {
        var exposure = PrintExposure.FromEffective(100);
        var negative = PredictedPrint.Expose(Steps, Negative, exposure, new PrintLook { Side = PrintSide.AsProcessed }).Densities(TestContext.Current.CancellationToken);
        var positive = PredictedPrint.Expose(Steps, Negative, exposure, new PrintLook { Side = PrintSide.Positive }).Densities(TestContext.Current.CancellationToken);
        var direct = PredictedPrint.Expose(Steps, Direct, exposure).Densities(TestContext.Current.CancellationToken);
        var directAsIs = PredictedPrint.Expose(Steps, Direct, exposure, new PrintLook { Side = PrintSide.AsProcessed }).Densities(TestContext.Current.CancellationToken);
        for (var i = 0; i < negative.Length; i++)
        {
            Assert.Equal(0.06 + 2.06, negative[i] + positive[i], 1e-4);
            Assert.Equal(directAsIs[i], direct[i]);
        }
    }

    // Unexposed rims: a negative's is white, a direct positive's black; a flash given to the open sheet reaches the rim too.
    [Theory]
    [InlineData(PaperKind.NegativeWorking, 0, true, 0.06)]
    [InlineData(PaperKind.DirectPositive, 0, true, 2.06)]
    [InlineData(PaperKind.NegativeWorking, 2, true, 0.06)]
    [InlineData(PaperKind.NegativeWorking, 2, false, 0.66)]
    public void The_rim_is_what_the_paper_is_without_the_image(PaperKind kind, double flash, bool throughHole, double density)
    {
        var print = PredictedPrint.Expose(
            Steps,
            Curve(kind),
            PrintExposure.FromEffective(100, H(flash), throughHole),
            new PrintLook { Side = PrintSide.AsProcessed, Border = Mm(5) });
        Assert.Equal((220, 180, 10), (print.Width, print.Height, print.BorderPixels));
        Assert.Equal(density, print.DensityAt(9, 90)!.Value.Value, 0.002);
        Assert.Equal(density, print.DensityAt(100, 179)!.Value.Value, 0.002);
        Assert.NotEqual(density, print.DensityAt(110, 90)!.Value.Value, 0.01);
    }

    // sRGB codes of reflectances (IEC 61966-2-1): 128 is 0.21586, so a density of 0.666 shows as 128 give or take a step of the table.
    [Fact]
    public void Codes_are_the_reflectances_in_srgb()
    {
        var print = PredictedPrint.Expose(Steps, Negative, PrintExposure.FromEffective(100), new PrintLook { Side = PrintSide.AsProcessed });
        var densities = print.Densities(TestContext.Current.CancellationToken);
        var grey = new byte[print.Width * print.Height];
        print.WriteGrey8(grey, TestContext.Current.CancellationToken);
        var row = new ushort[print.Width];
        for (var y = 0; y < print.Height; y += 7)
        {
            print.WriteLinear16(y, row);
            for (var x = 0; x < print.Width; x++)
            {
                var r = Math.Pow(10, -densities[(y * print.Width) + x]);
                var code = 255 * ((1.055 * Math.Pow(r, 1 / 2.4)) - 0.055);
                Assert.Equal(code, grey[(y * print.Width) + x], 1.0);
                Assert.Equal(65535 * r, row[x], 1 + (65535 * 2e-4));
            }
        }
    }

    [Fact]
    public void On_the_papers_own_white_the_rim_of_a_negative_is_white()
    {
        var print = PredictedPrint.Expose(
            Steps, Negative, PrintExposure.FromEffective(100), new PrintLook { Side = PrintSide.AsProcessed, Border = Mm(5), WhiteIsPaper = true });
        var grey = new byte[print.Width * print.Height];
        print.WriteGrey8(grey, TestContext.Current.CancellationToken);
        Assert.Equal(255, grey[0]);
    }

    [Fact]
    public void Unknown_parts_say_so_everywhere()
    {
        var narrow = PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(40));
        var print = PredictedPrint.Expose(Image(Flat(0.35, 60, 100, 80), narrow), Negative, PrintExposure.FromEffective(100));
        Assert.True(print.KnownShare < 0.5);
        Assert.Null(print.DensityAt(0, 0));
        Assert.NotNull(print.DensityAt(100, 80));
        Assert.True(float.IsNaN(print.Densities(TestContext.Current.CancellationToken)[0]));
        var grey = new byte[print.Width * print.Height];
        print.WriteGrey8(grey, TestContext.Current.CancellationToken);
        Assert.NotEqual(grey[0], grey[8]);
    }

    [Fact]
    public void Exposing_again_is_exposing()
    {
        var first = PredictedPrint.Expose(Steps, Negative, PrintExposure.FromEffective(10));
        var again = first.ExposedAgain(PrintExposure.FromEffective(200, H(0.3)));
        var anew = PredictedPrint.Expose(Steps, Negative, PrintExposure.FromEffective(200, H(0.3)));
        Assert.Equal(anew.Densities(TestContext.Current.CancellationToken), again.Densities(TestContext.Current.CancellationToken));
    }

    [Fact]
    public void Absurdities_are_refused()
    {
        Assert.Throws<RefusalException>(() => PrintExposure.FromEffective(double.NaN));
        Assert.Throws<RefusalException>(() => PrintExposure.FromEffective(-1));
        Assert.Throws<RefusalException>(() => new PrintLook { Border = Mm(201) });
        var print = PredictedPrint.Expose(Steps, Negative, PrintExposure.FromEffective(10));
        Assert.Throws<RefusalException>(() => print.WriteGrey8(new byte[10], TestContext.Current.CancellationToken));
    }
}
