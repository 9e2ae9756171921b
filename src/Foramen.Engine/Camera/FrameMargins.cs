using Foramen.Engine.Scene;

namespace Foramen.Engine.Camera;

/// <summary>Room between a subject and the edges of the finished picture, over the picture's width and height; negative where it is cut off.</summary>
/// <param name="Left">Left of the subject, over the width.</param>
/// <param name="Right">Right of the subject, over the width.</param>
/// <param name="Top">Above the subject, over the height.</param>
/// <param name="Bottom">Below the subject, over the height.</param>
public readonly record struct FrameMargins(double Left, double Right, double Top, double Bottom)
{
    private const int Steps = 16;

    /// <summary>The smallest of the four.</summary>
    public double Least => Math.Min(Math.Min(Left, Right), Math.Min(Top, Bottom));

    /// <summary>The margins of a rectangle in the photograph; null where part of it lies so far aside that the sheet's plane never meets it.</summary>
    /// <remarks>The rectangle's edges may bend or lean on the sheet: what counts is the box about them.</remarks>
    public static FrameMargins? Of(SheetProjection projection, RectangleInPhotograph subject)
    {
        var (left, right, top, bottom) = (double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity, double.PositiveInfinity);
        for (var i = 0; i <= Steps; i++)
        {
            var x = Between(subject.TopLeft.X, subject.BottomRight.X, i);
            var y = Between(subject.TopLeft.Y, subject.BottomRight.Y, i);
            foreach (var (px, py) in new[] { (x, subject.TopLeft.Y), (x, subject.BottomRight.Y), (subject.TopLeft.X, y), (subject.BottomRight.X, y) })
            {
                if (projection.PicturePlaceOf(PhotographPosition.FromFractions(px, py)) is not { } place)
                {
                    return null;
                }

                (left, right) = (Math.Min(left, place.XMillimetres), Math.Max(right, place.XMillimetres));
                (bottom, top) = (Math.Min(bottom, place.YMillimetres), Math.Max(top, place.YMillimetres));
            }
        }

        var (width, height) = (projection.PictureSize.Width.Millimetres, projection.PictureSize.Height.Millimetres);
        return new FrameMargins(0.5 + (left / width), 0.5 - (right / width), 0.5 - (top / height), 0.5 + (bottom / height));
    }

    private static double Between(double from, double to, int step) => from + ((to - from) * step / Steps);
}
