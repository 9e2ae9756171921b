using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Scan;

public class PrintSettingTests
{
    private const int Width = 400;
    private const int Height = 300;
    private static readonly (double X, double Y)[] Sheet = [(110, 80), (310, 80), (310, 230), (110, 230)];
    private static readonly (double X, double Y, double Density)[] Patches = [(45, 60, 0.1), (360, 240, 0.9), (40, 250, 0.5)];

    // Ground of density 0.3, patches on it, flare of none; the light falls to one side.
    private static ScanImage Scan(double slope) => ScanPictures.Draw(Width, Height, (column, row) =>
    {
        var density = Patches.Where(one => double.Hypot(column - one.X, row - one.Y) < 22).Select(one => one.Density).DefaultIfEmpty(0.3).First();
        return 0.8 * Math.Pow(10, -density) * Math.Exp(slope * ((column / (double)Width) - 0.5));
    });

    private static KnownPatch Patch(int index) => new(PixelPoint.At(Patches[index].X, Patches[index].Y), 15, Density.FromValue(Patches[index].Density));

    // Light in the middle stands for the densities: 0.8 · 10^(−D).
    [Fact]
    public void Patches_in_uneven_light_count_as_if_they_lay_in_the_middle()
    {
        var scan = Scan(0.8);
        var light = LightField.Around(scan, ScanPictures.Named(Sheet));
        var scale = PrintSetting.ScaleThrough(scan, light, [Patch(0), Patch(1), Patch(2)]);
        Assert.Equal(3, scale.Densities);
        Assert.Equal(0.5, scale.DensityOf(0.8 * Math.Pow(10, -0.5)).Value, 0.02);
        Assert.Equal(1.3, scale.DensityOf(0.8 * Math.Pow(10, -1.3)).Value, 0.05);
    }

    [Fact]
    public void Without_a_field_of_light_patches_count_as_they_are()
    {
        var scale = PrintSetting.ScaleThrough(Scan(0), null, [Patch(0), Patch(1)]);
        Assert.Equal(0.5, scale.DensityOf(0.8 * Math.Pow(10, -0.5)).Value, 0.02);
        var single = PrintSetting.ScaleThrough(Scan(0), null, [Patch(0)], Density.FromValue(0.3));
        Assert.Equal(1, single.Densities);
    }

    [Fact]
    public void Ground_of_known_density_is_a_patch_too_where_its_light_is_known()
    {
        var scan = Scan(0.8);
        var light = LightField.Around(scan, ScanPictures.Named(Sheet));
        Assert.Equal(2, PrintSetting.ScaleThrough(scan, light, [Patch(0)], Density.FromValue(0.3)).Densities);
        var alone = PrintSetting.ScaleThrough(scan, light, [], Density.FromValue(0.3));
        Assert.Equal(0.7, alone.DensityOf(0.8 * Math.Pow(10, -0.7)).Value, 0.01);
    }

    [Fact]
    public void Nothing_known_is_refused() => Assert.Throws<RefusalException>(() => PrintSetting.ScaleThrough(Scan(0), null, [], Density.FromValue(0.3)));

    [Fact]
    public void Unevenness_is_the_light_over_that_in_the_middle()
    {
        var scan = Scan(0.8);
        var light = LightField.Around(scan, ScanPictures.Named(Sheet));
        var setting = new PrintSetting(scan, ScanPictures.Named(Sheet), ScanPictures.LightIsReflectance, light);
        Gen.Select(Gen.Double[0, Width], Gen.Double[0, Height]).Sample((x, y) =>
        {
            Assert.Equal(Math.Exp(0.8 * ((x / Width) - 0.5)), setting.UnevennessAt(x, y), 0.02);
            Assert.Equal(1, (setting with { Light = null }).UnevennessAt(x, y));
        });
    }
}
