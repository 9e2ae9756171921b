using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Tests.Print.Motion;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print;

/// <summary>Prints of 80 × 60 pixels with two pixels of rim, of which a part is unknown that is not the same left and right, nor above and below.</summary>
public sealed class PredictedPrintOnSmallSheetTests
{
    private static readonly CharacteristicCurve Negative = Curve(PaperKind.NegativeWorking);

    private static LogisticCurve Curve(PaperKind kind) => LogisticCurve.FromRange(
        kind, Density.FromValue(0.06), Density.FromValue(2.06), 110, Density.FromValue(0.66), LuminousExposure.FromLuxSeconds(2));

    private static SheetImage Aside() => SmallSheet.Image((column, row) => 1 + (column % 7) + (row % 5), SmallSheet.Narrow, SheetAim.FromAngles(Angle.FromDegrees(8), Angle.FromDegrees(5)));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void What_is_unknown_is_none_and_black_and_hatched_and_all_else_is_its_pixel(bool mirrored)
    {
        var image = Aside();
        var look = new PrintLook { Side = PrintSide.AsProcessed, Border = Mm(2.5), IsMirrored = mirrored };
        var print = PredictedPrint.Expose(image, Negative, PrintExposure.FromEffective(1, LuminousExposure.FromLuxSeconds(0.1), false), look);
        Assert.Equal((84, 64, 2), (print.Width, print.Height, print.BorderPixels));
        var densities = print.Densities(TestContext.Current.CancellationToken);
        var grey = new byte[84 * 64];
        print.WriteGrey8(grey, TestContext.Current.CancellationToken);
        var (unknown, line) = (0, new ushort[84]);
        for (var row = 0; row < 64; row++)
        {
            print.WriteLinear16(row, line);
            for (var column = 0; column < 84; column++)
            {
                var i = (row * 84) + column;
                if (column is < 2 or >= 82 || row is < 2 or >= 62)
                {
                    Assert.Equal(Negative.DensityAt(LuminousExposure.FromLuxSeconds(0.1)).Value, densities[i], 0.001);
                }
                else if (image.At(mirrored ? 81 - column : column - 2, row - 2) is { } light)
                {
                    Assert.Equal(Negative.DensityAt(LuminousExposure.FromLuxSeconds(light.Lux + 0.1)).Value, densities[i], 0.001);
                    Assert.True(line[column] > 0);
                }
                else
                {
                    unknown++;
                    Assert.True(float.IsNaN(densities[i]));
                    Assert.Equal(0, line[column]);
                    continue;
                }

                Assert.Equal(65535 * Math.Pow(10, -densities[i]), line[column], 1 + (65535 * 2e-4));
                Assert.Equal(255 * ((1.055 * Math.Pow(10, -densities[i] / 2.4)) - 0.055), grey[i], 1.0);
            }
        }

        Assert.InRange(unknown, 500, 2500);
    }

    // Eight pixels dark, eight light, a pixel further to the left with each row down: lines that rise to the right.
    [Fact]
    public void The_hatching_is_of_slanting_lines()
    {
        var print = PredictedPrint.Expose(SmallSheet.Image((_, _) => 1, SmallSheet.Narrow), Negative, PrintExposure.FromEffective(1));
        var grey = new byte[80 * 60];
        print.WriteGrey8(grey, TestContext.Current.CancellationToken);
        Assert.True(grey[0] < grey[8]);
        for (var row = 0; row < 6; row++)
        {
            for (var column = 0; column < 80; column++)
            {
                Assert.Equal((column + row) % 16 < 8 ? grey[0] : grey[8], grey[(row * 80) + column]);
            }
        }
    }

    [Fact]
    public void Other_light_from_the_same_camera_is_exposed_on_the_same_paper()
    {
        var (image, other) = (Aside(), SmallSheet.Image((column, _) => column));
        var exposure = PrintExposure.FromEffective(3, LuminousExposure.FromLuxSeconds(0.2), true);
        var again = PredictedPrint.Expose(image, Negative, PrintExposure.FromEffective(1)).ExposedAgain(exposure, other);
        Assert.Equal(
            PredictedPrint.Expose(other, Negative, exposure).Densities(TestContext.Current.CancellationToken),
            again.Densities(TestContext.Current.CancellationToken));
        Assert.Equal(1, again.KnownShare);
        var larger = SheetImage.Make(
            Foramen.Engine.Scene.LuminanceMap.FromValues(40, 30, new float[1200]), image.Projection, 81, cancellation: TestContext.Current.CancellationToken);
        Assert.Contains("81 × 61", Assert.Throws<RefusalException>(() => again.ExposedAgain(exposure, larger)).Message, StringComparison.Ordinal);
    }

    // A flash given to the open sheet is on the rim, exposed anew too; one through the hole is not.
    [Theory]
    [InlineData(false, 0.66)]
    [InlineData(true, 0.06)]
    public void The_rim_exposed_again_has_the_flash_that_reached_it(bool throughHole, double density)
    {
        var look = new PrintLook { Side = PrintSide.AsProcessed, Border = Mm(2.5) };
        var exposure = PrintExposure.FromEffective(1, LuminousExposure.FromLuxSeconds(2), throughHole);
        var first = PredictedPrint.Expose(Aside(), Negative, exposure, look);
        Assert.Equal(density, first.DensityAt(0, 0)!.Value.Value, 0.002);
        Assert.Equal(density, PredictedPrint.Expose(Aside(), Negative, PrintExposure.FromEffective(9), look).ExposedAgain(exposure).DensityAt(0, 0)!.Value.Value, 0.002);
    }

    // 10^-2.06 of white without light on a direct positive; the bare paper of a negative is the white, where white is the paper's.
    [Fact]
    public void A_rim_without_light_is_as_dark_as_the_paper_becomes()
    {
        ushort Rim(PaperKind kind, bool whiteIsPaper)
        {
            var look = new PrintLook { Side = PrintSide.AsProcessed, Border = Mm(2.5), WhiteIsPaper = whiteIsPaper };
            var line = new ushort[84];
            PredictedPrint.Expose(Aside(), Curve(kind), PrintExposure.FromEffective(1), look).WriteLinear16(0, line);
            return line[0];
        }

        Assert.Equal(65535 * Math.Pow(10, -2.06), Rim(PaperKind.DirectPositive, false), 1.0);
        Assert.Equal(65535 * Math.Pow(10, -0.06), Rim(PaperKind.NegativeWorking, false), 1.0);
        Assert.Equal(65535 * Math.Pow(10, -2), Rim(PaperKind.DirectPositive, true), 1.0);
        Assert.Equal(65535, Rim(PaperKind.NegativeWorking, true));
    }

    [Fact]
    public void Rows_beside_the_print_and_too_little_room_are_refused()
    {
        var print = PredictedPrint.Expose(Aside(), Negative, PrintExposure.FromEffective(1));
        Assert.Throws<RefusalException>(() => print.WriteLinear16(-1, new ushort[80]));
        Assert.Throws<RefusalException>(() => print.WriteLinear16(60, new ushort[80]));
        Assert.Throws<RefusalException>(() => print.WriteLinear16(0, new ushort[79]));
        print.WriteLinear16(59, new ushort[80]);
        Assert.Contains(
            "needs 4800", Assert.Throws<RefusalException>(() => print.WriteGrey8(new byte[4799], TestContext.Current.CancellationToken)).Message, StringComparison.Ordinal);
        print.WriteGrey8(new byte[4800], TestContext.Current.CancellationToken);
    }
}
