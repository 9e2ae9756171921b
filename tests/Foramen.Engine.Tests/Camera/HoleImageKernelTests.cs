using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public class HoleImageKernelTests
{
    private static readonly PointSpread Spread = PointSpread.Of(
        Mm(0.35), Mm(63), PaperLight.Of(LightColour.Noon.ToSpectrum(), PaperSensitivity.BlueSensitive));

    [Fact]
    public void It_adds_up_to_one_and_looks_the_same_from_all_sides() => Gen.Select(Gen.Double[0.02, 1], Gen.Double[0.5, 0.97]).Sample((pitch, energy) =>
    {
        var kernel = HoleImageKernel.Of(Spread, pitch, energy);
        Assert.Equal(1, kernel.Weights.ToArray().Sum(w => (double)w), 1e-5);
        Assert.Equal(kernel.Size * kernel.Size, kernel.Weights.Length);
        for (var y = 0; y < kernel.Size; y++)
        {
            for (var x = 0; x < kernel.Size; x++)
            {
                var weight = kernel.Weights[(y * kernel.Size) + x];
                Assert.True(weight >= 0);
                Assert.Equal(weight, kernel.Weights[(x * kernel.Size) + y]);
                Assert.Equal(weight, kernel.Weights[(y * kernel.Size) + kernel.Size - 1 - x]);
            }
        }
    }, iter: Samples.Of(30));

    // The energy in the pixels is the spot's energy in a circle of about their reach; a pixel more or less of rim is a few parts in a hundred.
    [Fact]
    public void It_holds_the_energy_asked_for()
    {
        var kernel = HoleImageKernel.Of(Spread, 0.08, 0.95);
        Assert.InRange(kernel.HeldEnergy, 0.945, 0.965);
        var radius = Mm((kernel.HalfWidth + 0.5) * 0.08);
        Assert.Equal(Spread.EnergyWithin(radius), kernel.HeldEnergy, 0.01);
    }

    // Second moment of a geometrical disc of radius R: R²/4 along x, and a pixel adds its own twelfth.
    [Fact]
    public void A_large_holes_kernel_is_a_disc()
    {
        var disc = PointSpread.Of(Mm(6), Mm(63), PaperLight.Monochromatic(450));
        var kernel = HoleImageKernel.WithHalfWidth(disc, 0.2, 16);
        var moment = 0.0;
        for (var y = -16; y <= 16; y++)
        {
            for (var x = -16; x <= 16; x++)
            {
                moment += kernel.Weights[((y + 16) * 33) + x + 16] * x * x * 0.04;
            }
        }

        Assert.Equal((9 / 4.0) + (0.04 / 12), moment, 0.02);
        Assert.Equal(1, kernel.HeldEnergy, 0.005);
    }

    [Fact]
    public void On_a_coarse_grid_it_is_a_single_pixel() => Assert.Equal(1, HoleImageKernel.Of(Spread, 5).Size);

    // On pixels far wider than the spot the middle one holds all of it but the faint far rings, and one beside it nothing that counts.
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(20)]
    [InlineData(100)]
    public void A_pixel_wider_than_the_spot_holds_it(double pitch)
    {
        var kernel = HoleImageKernel.WithHalfWidth(Spread, pitch, 1);
        Assert.InRange(kernel.HeldEnergy, 0.98, 1.0005);
        Assert.Equal(1, kernel.Weights[4], 0.01);
        Assert.Equal(kernel.Weights[1], kernel.Weights[3]);
        Assert.InRange(kernel.Weights[1], 0, 0.003);
    }

    // A sharp disc of 3 mm on pixels of 4: each takes the part of the disc that lies on it. Beyond 2 mm from the middle lies a segment of (R² acos q − q R² √(1 − q²))/πR² of it, q = 2/3.
    [Fact]
    public void Wide_pixels_share_a_wide_disc_by_area()
    {
        var kernel = HoleImageKernel.WithHalfWidth(PointSpread.Of(Mm(6), Mm(63), PaperLight.Monochromatic(450)), 4, 1);
        var segment = (Math.Acos(2 / 3.0) - (2 / 3.0 * Math.Sqrt(5 / 9.0))) / Math.PI;
        Assert.Equal(segment, kernel.Weights[0] + kernel.Weights[1] + kernel.Weights[2], 0.005);
        Assert.Equal(1, kernel.HeldEnergy, 0.005);
    }

    [Fact]
    public void Absurd_grids_are_refused()
    {
        Assert.Throws<RefusalException>(() => HoleImageKernel.Of(Spread, 0));
        Assert.Throws<RefusalException>(() => HoleImageKernel.Of(Spread, 0.1, 1));
        Assert.Throws<RefusalException>(() => HoleImageKernel.WithHalfWidth(Spread, 0.1, -1));
    }
}
