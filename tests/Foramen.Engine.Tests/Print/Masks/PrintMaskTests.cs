using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Print;

public sealed class PrintMaskTests
{
    private static readonly Gen<(PinholeCamera Camera, MaskPlace Place, PaperKind Paper, bool OnItsSide)> AnyUse = Gen.Select(
        Gen.Double[40, 120], Gen.Double[-8, 8], Gen.Double[-8, 8], Gen.Double[0.01, 0.9], Gen.Bool, Gen.Bool, Gen.Bool)
        .Select((focal, footX, footY, part, before, direct, side) => (
            Flat(0.35, focal, 127, 102, 0, footX, footY),
            before ? MaskPlace.BeforeHole(Mm(1 + (part * focal))) : MaskPlace.InTray(Mm(part * focal)),
            direct ? PaperKind.DirectPositive : PaperKind.NegativeWorking,
            side));

    // Light traced in space: the hole at the origin, x to the right of whoever stands behind the camera, y up, z towards the subject, the paper at z = -f. Whoever looks at
    // a template, or at the coating, looks towards -z, and then right is -x.
    [Fact]
    public void Rays_past_the_cut_shape_draw_it_on_the_finished_print() => AnyUse.Sample(use =>
    {
        var (camera, place, paper, onItsSide) = use;
        var mask = PrintMask.Create(MaskOutline.Text("F"), Mm(20), place, MaskSense.Blocks, SheetPoint.FromMillimetres(11, -7));
        var focal = camera.FocalDistance.Millimetres;
        var depth = place.IsBeforeHole ? place.Distance.Millimetres : place.Distance.Millimetres - focal;
        var (cut, wanted) = (mask.ToCut(camera, paper, onItsSide), mask.OnPrint());
        for (var ring = 0; ring < cut.Count; ring++)
        {
            for (var i = 0; i < cut[ring].Count; i++)
            {
                var (x, y, z) = (-cut[ring][i].X, cut[ring][i].Y, depth);
                var (paperX, paperY) = (x * -focal / z, y * -focal / z);

                // A hole raised by h has the sheet's middle h below its axis; the offset is then -h. From the sheet's middle:
                (paperX, paperY) = (paperX - camera.HoleOffset.XMillimetres, paperY - camera.HoleOffset.YMillimetres);

                // The coating as it is looked at, turned by half a circle so that the subject's top is up.
                var (seenX, seenY) = (paperX, -paperY);

                // Coating to coating, left and right change places.
                (seenX, seenY) = paper == PaperKind.NegativeWorking ? (-seenX, seenY) : (seenX, seenY);
                if (onItsSide)
                {
                    // The camera was turned a quarter to the left, so the subject's top is to the sheet's right: as the subject is seen, the picture's (x, y) is the sheet's (y, -x).
                    var mirror = paper == PaperKind.DirectPositive ? -1 : 1;
                    (seenX, seenY) = (mirror * -seenY, mirror * seenX);
                }

                Assert.Equal(wanted[ring][i].X, seenX, 1e-9);
                Assert.Equal(wanted[ring][i].Y, seenY, 1e-9);
            }
        }
    }, iter: Samples.Of(100));

    // By hand: paper 60 mm behind the hole, tray 20 mm before the paper, so 40 mm from the hole: the mask is 40/60 of its shadow, and a hole of 0.3 mm draws an edge
    // 0.3·20/40 = 0.15 mm wide. Card 30 mm before the hole: 30/60 of its shadow, edge 0.3·(60 + 30)/30 = 0.9 mm.
    [Fact]
    public void Sizes_and_soft_edges_are_similar_triangles()
    {
        var camera = Flat(0.3, 60, 100, 80);
        Assert.Equal(2.0 / 3, MaskPlace.InTray(Mm(20)).ScaleIn(camera), 1e-12);
        Assert.Equal(0.15, MaskPlace.InTray(Mm(20)).PenumbraIn(camera).Millimetres, 1e-12);
        Assert.Equal(0.5, MaskPlace.BeforeHole(Mm(30)).ScaleIn(camera), 1e-12);
        Assert.Equal(0.9, MaskPlace.BeforeHole(Mm(30)).PenumbraIn(camera).Millimetres, 1e-12);
    }

    [Theory]
    [InlineData(PaperKind.DirectPositive, SheetFormat.Level)]
    [InlineData(PaperKind.DirectPositive, SheetFormat.Upright)]
    [InlineData(PaperKind.NegativeWorking, SheetFormat.Level)]
    [InlineData(PaperKind.NegativeWorking, SheetFormat.Upright)]
    public void An_f_reads_as_an_f_in_the_predicted_print(PaperKind kind, SheetFormat format)
    {
        var image = Even(format).Masked(PrintMask.Create(MaskOutline.Text("F"), Mm(30), MaskPlace.InTray(Mm(5))), kind);
        var print = Printed(image, kind);
        double At(double x, double y) => print.DensityAt((int)((x / print.PitchMillimetres) + (print.Width / 2.0)), (int)((print.Height / 2.0) - (y / print.PitchMillimetres)))!.Value.Value;

        // The letter is 30 mm wide and 42.5 mm high (4.8 × 6.8 units): stem at the left, arms at the top and in the middle, nothing at the lower right. Held-back light is black
        // on either finished print.
        foreach (var (x, y) in new[] { (-12.5, 18.7), (-12.5, 0), (-12.5, -18.0), (12.0, 18.7), (4.0, 0) })
        {
            Assert.True(At(x, y) > 1.5, $"ink at {x}, {y}: {At(x, y)}");
        }

        foreach (var (x, y) in new[] { (12.5, -18.0), (0, -10), (0, 9), (12.5, 0) })
        {
            Assert.True(At(x, y) < 1, $"no ink at {x}, {y}: {At(x, y)}");
        }
    }

    [Fact]
    public void A_direct_positive_in_the_hand_shows_the_subject_mirrored_and_a_negatives_print_does_not()
    {
        Assert.True(PrintMask.IsMirrored(PaperKind.DirectPositive));
        Assert.False(PrintMask.IsMirrored(PaperKind.NegativeWorking));
    }

    [Fact]
    public void A_mask_only_takes_light_and_its_opposite_takes_the_rest()
    {
        var plain = Even(SheetFormat.Level);
        var shape = MaskOutline.Ellipse(0.6);
        var blocked = plain.Masked(PrintMask.Create(shape, Mm(40), MaskPlace.InTray(Mm(25))), PaperKind.NegativeWorking);
        var passed = plain.Masked(PrintMask.Create(shape, Mm(40), MaskPlace.InTray(Mm(25)), MaskSense.Passes), PaperKind.NegativeWorking);
        for (var i = 0; i < plain.Lux.Length; i++)
        {
            Assert.InRange(blocked.Lux[i], 0, plain.Lux[i]);
            Assert.Equal(plain.Lux[i], blocked.Lux[i] + passed.Lux[i], plain.Lux[i] * 1e-5f);
        }
    }

    // The light taken is that of the ellipse's area πab, however soft the edge: a = 20, b = 12 mm.
    [Fact]
    public void The_shadows_area_is_the_ellipses() => Gen.Double[0, 55].Sample(
        fromPaper =>
        {
            var grid = SheetGrid.WithLongSide(SheetProjection.Of(Flat(0.35, 63, 127, 102), PhotographField.FromHorizontalAngle(400, 300, Angle.FromDegrees(90))), 300);
            var light = MaskShadow.Of(PrintMask.Create(MaskOutline.Ellipse(0.6), Mm(40), MaskPlace.InTray(Mm(fromPaper))), grid, BoxA, false);
            Assert.Equal(Math.PI * 20 * 12, light.Sum(part => 1.0 - part) * grid.PitchMillimetres * grid.PitchMillimetres, 1.5);
        },
        iter: Samples.Of(20));

    [Fact]
    public void Curved_paper_and_a_tray_at_the_hole_are_refused()
    {
        Assert.Contains("curved", Assert.Throws<RefusalException>(() => MaskPlace.InTray(Mm(5)).ScaleIn(Curved(0.3, 80, 45, 90, 60))).Message, StringComparison.Ordinal);
        Assert.Contains("nearer to the paper", Assert.Throws<RefusalException>(() => MaskPlace.InTray(Mm(62)).PenumbraIn(BoxA)).Message, StringComparison.Ordinal);
    }

    private static SheetImage Even(SheetFormat format)
    {
        var values = new float[400 * 400];
        Array.Fill(values, 1000);
        var field = PhotographField.FromHorizontalAngle(400, 400, Angle.FromDegrees(120));
        return SheetImage.Make(LuminanceMap.FromValues(400, 400, values), SheetProjection.Of(BoxA, field, format), 254);
    }

    private static PredictedPrint Printed(SheetImage image, PaperKind kind)
    {
        var curve = LogisticCurve.FromRange(kind, Density.FromValue(0.06), Density.FromValue(2.06), 110, Density.FromValue(0.66), LuminousExposure.FromLuxSeconds(2));
        var seconds = (kind == PaperKind.DirectPositive ? 40 : 20) / image.Lux.ToArray().Max();
        return PredictedPrint.Expose(image, curve, PrintExposure.FromEffective(seconds), new PrintLook { IsMirrored = PrintMask.IsMirrored(kind) });
    }
}
