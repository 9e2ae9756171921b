using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

/// <summary>
/// A flat box turned a quarter to the left is, in all it draws, the box with the sheet turned instead: what was 10 mm above the foot of the hole's axis is then 10 mm to its left.
/// </summary>
public sealed class TurnedSheetTests
{
    private static readonly PhotographField Wide = PhotographField.FromHorizontalAngle(2000, 1500, Angle.FromDegrees(90));

    private static readonly Gen<(PinholeCamera Side, PinholeCamera Turned)> AnyPair = Gen.Select(Gen.Double[50, 100], Gen.Double[90, 120], Gen.Double[50, 85], Gen.Double[-30, 30], Gen.Double[-30, 30], Gen.Double[-25, 25])
        .Select((focal, width, height, footX, footY, tilt) => (
            Flat(0.3, focal, width, height, 0.1, footX, footY).TiltedTo(Angle.FromDegrees(tilt)), Flat(0.3, focal, height, width, 0.1, -footY, footX).TiltedTo(Angle.FromDegrees(tilt))));

    [Fact]
    public void It_draws_the_same_picture() => Gen.Select(AnyPair, Gen.Double[-30, 30], Gen.Double[-20, 20], Gen.Double[0.05, 0.95], Gen.Double[0.05, 0.95]).Sample((pair, pan, photographTilt, x, y) =>
    {
        var aim = SheetAim.FromAngles(Angle.FromDegrees(pan), Angle.FromDegrees(photographTilt));
        var (side, turned) = (SheetProjection.Of(pair.Side, Wide, SheetFormat.Upright, aim), SheetProjection.Of(pair.Turned, Wide, null, aim));
        var position = PhotographPosition.FromFractions(x, y);
        var (one, other) = (side.PicturePlaceOf(position), turned.PicturePlaceOf(position));
        Assert.Equal(other is null, one is null);
        if (one is { } a && other is { } b)
        {
            Assert.Equal(b.XMillimetres, a.XMillimetres, 1e-6 * (1 + Math.Abs(b.XMillimetres)));
            Assert.Equal(b.YMillimetres, a.YMillimetres, 1e-6 * (1 + Math.Abs(b.YMillimetres)));
            Assert.Equal(turned.PointOf(position) is null, side.PointOf(position) is null);
            Assert.Equal(turned.RelativeIlluminance(b.XMillimetres, b.YMillimetres), side.RelativeIlluminance(b.XMillimetres, b.YMillimetres), 1e-9);
        }

        Assert.Equal(turned.PhotographPixelsPerMillimetre(), side.PhotographPixelsPerMillimetre(), 1e-9);
        var (outline, expected) = (FrameOutline.Of(side), FrameOutline.Of(turned));
        Assert.Equal(expected.Points.Count, outline.Points.Count);
        Assert.All(expected.Points.Zip(outline.Points), points => Assert.True(double.Hypot(points.First.X - points.Second.X, points.First.Y - points.Second.Y) < 1e-9 * (1 + Math.Abs(points.First.X) + Math.Abs(points.First.Y))));
    });

    [Fact]
    public void It_frames_the_same() => Gen.Select(AnyPair, Gen.Double[5, 100], Gen.Double[1, 40], Gen.Double[-20, 20], Gen.Double[0, 0.3]).Sample((pair, distance, height, from, margin) =>
    {
        var subject = FramingSubject.Of(Length.FromMetres(distance), Length.FromMetres(height), from);
        var (side, turned) = (Framing.With(pair.Side, SheetFormat.Upright), Framing.With(pair.Turned));
        Assert.Equal(SheetFormat.Upright, turned.Format);
        var (one, other) = (side.Fit(subject, pair.Side.Tilt), turned.Fit(subject, pair.Side.Tilt));
        Assert.Equal(other.MarginTop, one.MarginTop, 1e-9 * (1 + Math.Abs(other.MarginTop)));
        Assert.Equal(other.MarginBottom, one.MarginBottom, 1e-9 * (1 + Math.Abs(other.MarginBottom)));
        Assert.Equal(other.TopOverBase, one.TopOverBase, 1e-6 * other.TopOverBase);
        Assert.Equal(other.EdgeLean!.Value.Degrees, one.EdgeLean!.Value.Degrees, 1e-9);
        Assert.Equal(turned.CentringTilt(subject).Degrees, side.CentringTilt(subject).Degrees, 1e-9);
        Assert.Equal(turned.NearestTilted(subject, margin).Metres, side.NearestTilted(subject, margin).Metres, 1e-6);
        Assert.Equal(turned.NearestLevel(subject, margin)?.Metres ?? -1, side.NearestLevel(subject, margin)?.Metres ?? -1, 1e-6 * (1 + (turned.NearestLevel(subject, margin)?.Metres ?? 0)));
    });
}
