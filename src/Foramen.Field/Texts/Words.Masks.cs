using Foramen.Engine.Camera;
using Foramen.Engine.Paper;
using Foramen.Engine.Print;
using Foramen.Field.Units;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>Masks.</summary>
    public static class Masks
    {
        public const string Title = "A mask";
        public const string Open = "A mask";
        public const string Shape = "It shows";
        public const string Ellipse = "An ellipse";
        public const string Silhouette = "A silhouette";
        public const string Text = "Words";
        public const string TextHint = "A to Z, 0 to 9 and . , - + / ' : ! ? &";
        public const string Path = "SVG path data";
        public const string PathHint = "The d of a path, such as M 0 0 L 10 0 L 5 8 Z";
        public const string File = "Take the paths of an SVG file";
        public const string Width = "Width on the print";
        public const string Height = "Height on the print";
        public const string Right = "Right of the middle";
        public const string Up = "Above the middle";
        public const string Tray = "Tray before the paper";
        public const string Outside = "Mask before the hole";
        public const string Place = "It lies";
        public const string InTray = "In a tray before the paper";
        public const string BeforeHole = "Outside, before the hole";
        public const string Sense = "The shape";
        public const string Blocks = "Holds light back";
        public const string Passes = "Lets light through";
        public const string Paper = "Paper";
        public const string OnPrint = "On the finished print";
        public const string OnPrintAlt = "Where the shape lies on the finished print.";
        public const string Keep = "Keep this mask";

        public static string NameOf(string shape) => shape == "ellipse" ? Ellipse : shape == "path" ? Silhouette : Title;

        public static string Kept(string name) => $"“{name}” is in the journal.";

        public static string Size(PrintMask mask, PinholeCamera camera, UnitSystem units)
        {
            var scale = mask.Place.ScaleIn(camera);
            return $"To cut {Lengths.Bare(mask.Width.Millimetres * scale, units)} × {Lengths.Show(mask.Height.Millimetres * scale, units)}; its edge is soft over {Lengths.Show(mask.Place.PenumbraIn(camera).Millimetres, units)}.";
        }

        public static string Mirrored(PaperKind paper, bool beforeHole) => (paper, beforeHole) switch
        {
            (PaperKind.DirectPositive, false) => "A direct positive shows the subject mirrored, left for right; the mask lies turned by half a circle, and reads right.",
            (PaperKind.DirectPositive, true) => "A direct positive shows the subject mirrored, left for right; before the hole the mask stands upright, read from the subject’s side.",
            (_, false) => "The print of a negative shows the subject as it was; the mask lies turned and mirrored, and reads right on that print.",
            _ => "The print of a negative shows the subject as it was; before the hole the mask stands upright and mirrored, seen from the subject’s side.",
        };
    }
}
