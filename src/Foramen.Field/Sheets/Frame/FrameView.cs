using Foramen.Engine.Camera;
using Foramen.Engine.Scene;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Sheets.Frame;

/// <summary>The window on the photograph's plane that the overlay shows, in the photograph's pixels; larger than it where the sheet sees more.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Top">Upper edge.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
public sealed record FrameView(double Left, double Top, double Width, double Height)
{
    private const double MostPhotographs = 2.2;
    private const double Room = 1.06;

    /// <summary>The window that holds photograph and sheet when the camera points straight along it, so that it stays put while the frame is moved.</summary>
    public static FrameView Of(PinholeCamera camera, PhotographField field, SheetOrientation orientation)
    {
        var straight = FrameOutline.Of(SheetScene.Project(camera, field, orientation, 0, 0)).Points;
        double Reach(Func<(double X, double Y), double> way)
            => straight.Count == 0 ? MostPhotographs : Math.Clamp(straight.Max(p => 2 * Math.Abs(way(p) - 0.5)) * Room, 1, MostPhotographs);

        var (width, height) = (field.Width * Reach(p => p.X), field.Height * Reach(p => p.Y));
        return new FrameView((field.Width - width) / 2, (field.Height - height) / 2, width, height);
    }

    /// <summary>A smaller window about a place of the photograph, in fractions, so that a finger can mark something small; within this one.</summary>
    public FrameView CloserTo((double X, double Y) place, ScenePhotograph photo)
    {
        const double Times = 3.5;
        var (width, height) = (Width / Times, Height / Times);
        return new FrameView(
            Math.Clamp((place.X * photo.Width) - (width / 2), Left, Left + Width - width),
            Math.Clamp((place.Y * photo.Height) - (height / 2), Top, Top + Height - height),
            width,
            height);
    }

    /// <summary>The place in the photograph, in fractions that may lie outside it, of a place in the window.</summary>
    public (double X, double Y) PlaceOf((double X, double Y) part, ScenePhotograph photo)
        => ((Left + (part.X * Width)) / photo.Width, (Top + (part.Y * Height)) / photo.Height);
}
