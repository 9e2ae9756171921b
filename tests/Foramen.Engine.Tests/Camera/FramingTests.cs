using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public class FramingTests
{
    private static readonly Gen<FramingSubject> AnySubject = Gen.Select(Gen.Double[1, 200], Gen.Double[0.5, 60], Gen.Double[-30, 30])
        .Select((distance, height, from) => Subject(distance, height, from));

    private static readonly Gen<Framing> AnyFraming = Gen.Select(AnyCamera, Gen.Bool)
        .Select((camera, upright) => Framing.With(camera, upright ? SheetFormat.Upright : SheetFormat.Level));

    // Similar triangles, by hand: 20 m high from 2 m below a hole 40 m away, 60 mm before the paper: 18/40·60 = 27 mm up, 3 mm down. On a sheet
    // 80 mm high that leaves 13 mm and 37 mm.
    [Fact]
    public void A_level_camera_is_similar_triangles()
    {
        var fit = Framing.With(Flat(0.35, 60, 100, 80)).Fit(Subject(40, 20, -2), Angle.Zero);
        Assert.Equal(13 / 80.0, fit.MarginTop, 1e-9);
        Assert.Equal(37 / 80.0, fit.MarginBottom, 1e-9);
        Assert.True(fit.Fits);
        Assert.Equal(1, fit.TopOverBase, 1e-6);
        Assert.Equal(0, fit.EdgeLean!.Value.Degrees, 1e-12);
    }

    // A hole raised in the front by 10 mm (a rising front) shows the foot of the axis 10 mm lower: 13 + 10 mm above.
    [Fact]
    public void A_raised_hole_brings_in_more_above()
    {
        var fit = Framing.With(Flat(0.35, 60, 100, 80, footY: -10)).Fit(Subject(40, 20, -2), Angle.Zero);
        Assert.Equal(23 / 80.0, fit.MarginTop, 1e-9);
        Assert.Equal(27 / 80.0, fit.MarginBottom, 1e-9);
    }

    // On its side the same box is 100 mm high.
    [Fact]
    public void Upright_has_the_long_side_to_spend()
        => Assert.Equal(23 / 100.0, Framing.With(Flat(0.35, 60, 100, 80), SheetFormat.Upright).Fit(Subject(40, 20, -2), Angle.Zero).MarginTop, 1e-9);

    // Level: the top needs D ≥ 18·60/40 = 27 m, the base D ≥ 2·60/40 = 3 m.
    [Fact]
    public void Nearest_with_a_level_camera()
        => Assert.Equal(27, Framing.With(Flat(0.35, 60, 100, 80)).NearestLevel(Subject(1, 20, -2))!.Value.Metres, 1e-9);

    // A sheet that sees 90° (60 mm behind the hole, 120 mm high). From 2 m below to 18 m above is seen under a right angle from a point of Thales'
    // circle (Euclid III.31): D² = 2·18 = 36. A wall that begins level with the hole is seen under less than that from anywhere.
    [Fact]
    [Source("euclid", "III.31", Basis.Worked)]
    public void Nearest_with_a_tilted_camera_by_Thales()
    {
        var framing = Framing.With(Flat(0.35, 60, 120, 120));
        Assert.Equal(6, framing.NearestTilted(Subject(1, 20, -2)).Metres, 1e-9);
        Assert.Equal(0, framing.NearestTilted(Subject(1, 20, 0)).Metres, 1e-9);
    }

    // The picture to hang: a wall from b to b + h above the eye is seen under its widest angle from D = √(b(b + h)), sine h/(2b + h) (Regiomontanus'
    // problem of 1471, Dörrie, 100 Great Problems, no. 97; the closed form from memory). A sheet that sees more than that holds it from anywhere.
    [Fact]
    [Source("dorrie", "no. 97", Basis.Memory)]
    public void Regiomontanus()
    {
        var subject = Subject(1, 10, 5); // widest: arcsin(10/20) = 30° from √75 m
        var half = 60 * Math.Tan(15 * Math.PI / 180);
        Assert.Equal(0, Framing.With(Flat(0.35, 60, 100, 2 * half * 1.0001)).NearestTilted(subject).Metres, 1e-9);
        var justTooSmall = Framing.With(Flat(0.35, 60, 100, 2 * half * 0.999999)).NearestTilted(subject).Metres;
        Assert.Equal(Math.Sqrt(75), justTooSmall, 0.05);
    }

    // With the hole in the middle of flat paper the centring tilt halves the angle between base and top.
    [Fact]
    public void Centring_halves_the_angle() => AnySubject.Sample(subject =>
    {
        var tilt = Framing.With(Flat(0.35, 60, 100, 80)).CentringTilt(subject);
        Assert.Equal((subject.BaseElevation.Degrees + subject.TopElevation.Degrees) / 2, tilt.Degrees, 1e-6);
    });

    [Fact]
    public void Centring_leaves_the_same_above_and_below() => Gen.Select(AnyFraming, AnySubject).Sample((framing, subject) =>
    {
        if (subject.TopElevation.Degrees - subject.BaseElevation.Degrees > 60 || Math.Abs(subject.TopElevation.Degrees + subject.BaseElevation.Degrees) > 120)
        {
            return;
        }

        var fit = framing.Fit(subject, framing.CentringTilt(subject));
        Assert.Equal(fit.MarginTop, fit.MarginBottom, 1e-6);
    });

    // Two roads to the same answer: at the nearest distance the margin, worked out forwards, is the one asked for.
    [Fact]
    public void At_the_nearest_distance_the_margin_is_what_was_asked() => Gen.Select(AnyFraming, AnySubject, Gen.Double[0, 0.3]).Sample((framing, subject, margin) =>
    {
        if (framing.NearestLevel(subject, margin) is { Metres: > 0.05 } level)
        {
            Assert.Equal(margin, framing.Fit(At(subject, level), Angle.Zero).LeastMargin, 1e-6);
        }

        if (framing.NearestTilted(subject, margin) is { Metres: > 0.05 } tilted)
        {
            var there = At(subject, tilted);
            var tilt = framing.CentringTilt(there);
            if (Math.Abs(tilt.Degrees) < 80 && there.TopElevation.Degrees - there.BaseElevation.Degrees < 160)
            {
                Assert.Equal(margin, framing.Fit(there, tilt).LeastMargin, 1e-5);
            }
        }
    });

    [Fact]
    public void Farther_away_it_fits_all_the_better() => Gen.Select(AnyFraming, AnySubject, Gen.Double[1.01, 3]).Sample((framing, subject, times) =>
    {
        if (framing.NearestTilted(subject, 0.05) is not { Metres: > 0.1 and < 10_000 } nearest)
        {
            return;
        }

        var there = At(subject, Length.FromMetres(nearest.Metres * times));
        Assert.True(framing.Fit(there, framing.CentringTilt(there)).LeastMargin > 0.05 - 1e-6);
    });

    // Perspective of a tilted picture: a point at depth D·cos t + y·sin t is drawn f/depth as large. 30 m away, 20 m up, tilt 20°, from level ground:
    // 30·cos 20°/(30·cos 20° + 20·sin 20°) = 28.191/(28.191 + 6.840) = 0.8047. Uprights run together at 60/tan 20° = 164.85 mm; at 50 mm aside they lean
    // by atan(50/164.85) = 16.873°.
    [Fact]
    public void Uprights_run_together()
    {
        var fit = Framing.With(Flat(0.35, 60, 100, 80)).Fit(Subject(30, 20, 0), Angle.FromDegrees(20));
        Assert.Equal(0.8047, fit.TopOverBase, 5e-5);
        Assert.Equal(16.873, fit.EdgeLean!.Value.Degrees, 5e-4);
    }

    [Fact]
    public void Convergence_is_the_cosines_whatever_the_format() => Gen.Select(AnySubject, Gen.Double[-25, 25], Gen.Bool, Gen.Double[-10, 10]).Sample((subject, tilt, upright, shift) =>
    {
        var (low, high, t) = (subject.BaseElevation.Radians, subject.TopElevation.Radians, tilt * Math.PI / 180);
        if (Math.Max(Math.Abs(low - t), Math.Abs(high - t)) > 1.5)
        {
            return;
        }

        var framing = Framing.With(Flat(0.35, 60, 100, 80, footX: shift, footY: -shift), upright ? SheetFormat.Upright : SheetFormat.Level);
        var byHand = Math.Cos(low - t) * Math.Cos(high) / (Math.Cos(high - t) * Math.Cos(low));
        Assert.Equal(1, framing.Fit(subject, Angle.FromDegrees(tilt)).TopOverBase / byHand, 1e-6);
    });

    // Round paper about the hole, on its side: up the picture it counts angles. 30° each way is the arc 50·π/6 = 26.18 mm of a half sheet of 30 mm.
    [Fact]
    public void Curved_paper_on_its_side_counts_angles()
    {
        var fit = Framing.With(Curved(0.3, 50, 50, 60, 40), SheetFormat.Upright).Fit(Subject(10, 20 / Math.Sqrt(3), -10 / Math.Sqrt(3)), Angle.Zero);
        Assert.Equal((30 - 26.1799) / 60, fit.MarginTop, 1e-5);
        Assert.Null(fit.EdgeLean);
    }

    [Fact]
    public void What_never_fits_a_level_camera_is_said()
        => Assert.Null(Framing.With(Flat(0.35, 60, 100, 80, footY: 45)).NearestLevel(Subject(10, 5, 1)));

    [Theory]
    [InlineData(0, 5, 0)]
    [InlineData(double.NaN, 5, 0)]
    [InlineData(10, 0, 0)]
    [InlineData(10, 5, double.PositiveInfinity)]
    public void The_absurd_is_refused(double distance, double height, double from)
        => Assert.Throws<RefusalException>(() => Subject(distance, height, from));

    private static FramingSubject Subject(double distance, double height, double from)
        => FramingSubject.Of(Length.FromMetres(distance), Length.FromMetres(height), from);

    private static FramingSubject At(FramingSubject subject, Length distance) => FramingSubject.Of(distance, subject.Height, subject.BaseMetres);
}
