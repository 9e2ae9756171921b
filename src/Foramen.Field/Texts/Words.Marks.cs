using System.Globalization;
using Foramen.Engine.Camera;
using Foramen.Field.Units;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>Sighting marks.</summary>
    public static class Marks
    {
        public const string Title = "Sighting marks";
        public const string Open = "Sighting marks for the box";
        public const string About = "Pins or drawn lines on the box that show what the sheet sees: look from a rear mark over the front mark.";
        public const string Base = "From front mark to rear marks";
        public const string BaseHint = "Longer aims better; it must fit a page";
        public const string Face = "Face of the box";
        public const string Top = "Top";
        public const string Side = "Right side";
        public const string Aim = "Aims to";
        public const string Print = "Print at true scale";
        public const string PrintDetail = "At 100 %, without fitting to the page";

        public static string Shows(string name) => char.ToUpperInvariant(name[0]) + name[1..];

        public static string Rear(SightLine line, UnitSystem units)
        {
            var across = line.RearAcrossMillimetres;
            var (less, more) = line.Face == MarkFace.Top ? ("left", "right") : ("down", "up");
            return Math.Abs(across) < 0.05 ? "rear mark straight behind" : $"rear mark {Lengths.Show(Math.Abs(across), units)} {(across < 0 ? less : more)}";
        }

        public static string Tolerance(SightingMarks marks) => string.Create(
            CultureInfo.CurrentCulture,
            $"± {marks.Tolerance.Degrees:0.0}°, {marks.WidthShare * 100:0.0} % of the width, {marks.HeightShare * 100:0.0} % of the height");
    }
}
