using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

/// <summary>Where a subject fits, where it does not, and what is said at the ends.</summary>
public sealed class FramingReachTests
{
    private static readonly Gen<Framing> AnyFraming = Gen.OneOf(
        Gen.Select(AnyCamera, Gen.Bool).Select((camera, upright) => Framing.With(camera, upright ? SheetFormat.Upright : SheetFormat.Level)),
        Gen.Select(Gen.Double[-60, 60], Gen.Double[60, 100]).Select((foot, height) => Framing.With(Flat(0.3, 60, 120, height, footY: foot))));

    private static FramingSubject Subject(double distance, double height, double from) => FramingSubject.Of(Length.FromMetres(distance), Length.FromMetres(height), from);

    // Tried at two hundred distances from 5 cm to 10 km: nearer than the nearest it never fits, and where no distance is given at none at all.
    [Fact]
    public void Nearer_than_the_nearest_it_does_not_fit() => Gen.Select(AnyFraming, Gen.Double[0.5, 60], Gen.Double[-40, 30], Gen.Double[0, 0.3]).Sample((framing, height, from, margin) =>
    {
        var nearest = framing.NearestLevel(Subject(1, height, from), margin);
        for (var i = 0; i < 200; i++)
        {
            var distance = 0.05 * Math.Pow(10, i * 0.0265);
            if (framing.Fit(Subject(distance, height, from), Angle.Zero).LeastMargin >= margin + 1e-6)
            {
                Assert.NotNull(nearest);
                Assert.True(distance >= nearest.Value.Metres * (1 - 1e-6));
            }
        }
    });

    // A hole 50 mm below the middle of a sheet 80 mm high: it looks down only, from 10/60 to 90/60. What lies 4 m to 20 m below is in the picture from 20·60/90 = 13.33 m to
    // 4·60/10 = 24 m; with its top at 2 m only to 12 m, so at none; and what rises above the hole at none.
    [Theory]
    [InlineData(-20, -4, 13.3333)]
    [InlineData(-20, -2, null)]
    [InlineData(-20, 0, null)]
    [InlineData(-20, 1, null)]
    public void A_camera_that_only_looks_down(double from, double to, double? nearest)
    {
        var found = Framing.With(Flat(0.3, 60, 100, 80, footY: 50)).NearestLevel(Subject(1, to - from, from));
        Assert.Equal(nearest is null, found is null);
        Assert.Equal(nearest ?? -1, found?.Metres ?? -1, 1e-4);
    }

    // And one that only looks up is the same upside down.
    [Theory]
    [InlineData(4, 20, 13.3333)]
    [InlineData(2, 20, null)]
    [InlineData(0, 20, null)]
    public void A_camera_that_only_looks_up(double from, double to, double? nearest)
    {
        var found = Framing.With(Flat(0.3, 60, 100, 80, footY: -50)).NearestLevel(Subject(1, to - from, from));
        Assert.Equal(nearest is null, found is null);
        Assert.Equal(nearest ?? -1, found?.Metres ?? -1, 1e-4);
    }

    // With a tenth of the height left free the half sheet is 32 mm of 40: 18·60/32 = 33.75 m.
    [Fact]
    public void A_margin_is_a_smaller_sheet()
        => Assert.Equal(33.75, Framing.With(Flat(0.35, 60, 100, 80)).NearestLevel(Subject(1, 20, -2), 0.1)!.Value.Metres, 1e-9);

    // From a hand's breadth a tower is all around: the tilt that halves the angle, and never beyond 89° either way.
    [Fact]
    public void From_close_by_the_tilt_stays_within_its_bounds()
    {
        var framing = Framing.With(Flat(0.35, 60, 100, 80));
        Assert.Equal(0, framing.CentringTilt(Subject(0.05, 10_000, -5_000)).Degrees, 1e-9);
        Assert.Equal(89, framing.CentringTilt(Subject(0.05, 100, 50)).Degrees, 1e-6);
        Assert.Equal(-89, framing.CentringTilt(Subject(0.05, 100, -150)).Degrees, 1e-6);
    }

    // A subject from 30 m below to 70 m above at 0.05 m: nearly a half circle, its ends at atan(600) and atan(1400) = 89.905° and 89.959°; half their difference is 0.027°.
    [Fact]
    public void Nearly_a_half_circle_is_halved()
        => Assert.Equal((Math.Atan(1400) - Math.Atan(600)) * 90 / Math.PI, Framing.With(Flat(0.35, 60, 100, 80)).CentringTilt(Subject(0.05, 100, -30)).Degrees, 1e-6);

    [Fact]
    public void A_shifted_hole_tilts_less_to_centre() => Gen.Select(Gen.OneOf(Gen.Double[-30, -1], Gen.Double[1, 30]), Gen.Double[10, 60], Gen.Double[2, 20]).Sample((foot, distance, height) =>
    {
        var subject = Subject(distance, height, -2);
        var (framing, middle) = (Framing.With(Flat(0.35, 60, 100, 80, footY: foot)), Framing.With(Flat(0.35, 60, 100, 80)));
        Assert.Equal(Math.Sign(foot), Math.Sign(Math.Round(framing.CentringTilt(subject).Degrees - middle.CentringTilt(subject).Degrees, 6)));
        var fit = framing.Fit(subject, framing.CentringTilt(subject));
        Assert.Equal(fit.MarginTop, fit.MarginBottom, 1e-9);
        Assert.Equal(Math.Min(fit.MarginTop, fit.MarginBottom), fit.LeastMargin);
        Assert.Equal(fit.LeastMargin >= 0, fit.Fits);
    });

    // Touching both edges of the sheet a subject is still on it; 20 m from 10 m below, 15 m away: 10·60/15 = 40 mm each way of a sheet of 80.
    [Fact]
    public void What_touches_the_edges_fits()
    {
        Assert.True(new FramingFit(Angle.Zero, 0, 0, 1, null).Fits);
        Assert.Equal(0, Framing.With(Flat(0.35, 60, 100, 80)).Fit(Subject(15, 20, -10), Angle.Zero).LeastMargin, 1e-12);
        Assert.False(new FramingFit(Angle.Zero, 0.1, -1e-9, 1, null).Fits);
    }

    // Upright lines run to a point f/tan t above the axis' foot: with the foot 10 mm above the middle, 60/tan 20° + 10 = 174.85 mm above it, so atan(50/174.85) = 15.9585°.
    [Fact]
    public void The_lean_is_that_at_half_the_height()
        => Assert.Equal(15.9585, Framing.With(Flat(0.35, 60, 100, 80, footY: 10)).Fit(Subject(30, 20, 0), Angle.FromDegrees(20)).EdgeLean!.Value.Degrees, 5e-4);

    [Fact]
    public void Paper_around_a_level_hole_keeps_uprights_even()
        => Assert.Equal(1, Framing.With(Curved(0.3, 50, 50, 60, 40)).Fit(Subject(20, 8, -2), Angle.Zero).TopOverBase, 1e-6);

    [Fact]
    public void A_square_sheet_stands_as_it_is_told()
    {
        var square = Flat(0.35, 60, 90, 90, footX: 20, footY: -10);
        var (plain, upright) = (Framing.With(square), Framing.With(square, SheetFormat.Upright));
        Assert.Equal((SheetFormat.Level, SheetFormat.Upright), (plain.Format, upright.Format));
        Assert.Equal(plain.Fit(Subject(30, 20, -2), Angle.Zero), upright.Fit(Subject(30, 20, -2), Angle.Zero));
        Assert.Equal(SheetFormat.Upright, SheetProjection.Of(square, Foramen.Engine.Scene.PhotographField.FromHorizontalAngle(2000, 1500, Angle.FromDegrees(60)), SheetFormat.Upright).Format);
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        var framing = Framing.With(Flat(0.35, 60, 100, 80));
        Action[] absurd =
        [
            () => framing.Fit(Subject(30, 20, 0), Angle.FromDegrees(89.1)), () => framing.Fit(Subject(30, 20, 0), Angle.FromDegrees(-89.1)),
            () => framing.NearestLevel(Subject(30, 20, 0), 0.46), () => framing.NearestLevel(Subject(30, 20, 0), -0.01),
            () => framing.NearestTilted(Subject(30, 20, 0), 0.46), () => Subject(0.04, 1, 0), () => Subject(100_001, 1, 0), () => Subject(1, 10_001, 0), () => Subject(1, 1, -10_001),
        ];
        Assert.All(absurd, act => Assert.Throws<RefusalException>(act));
    }
}
