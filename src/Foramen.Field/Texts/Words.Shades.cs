using System.Globalization;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>What stands in the sun's way at a place.</summary>
    public static class Shades
    {
        public const string Title = "What hides the sun";
        public const string About = "A house, a row of trees, a hill: with its edges and its top the hours in its shadow are left out. Stand where the shadow falls and sight from there.";
        public const string Name = "What it is";
        public const string NameHint = "Such as row of poplars";
        public const string Left = "Left edge at";
        public const string Right = "Right edge at";
        public const string Top = "Top, in its middle";
        public const string TopHint = "Degrees above the horizon. At arm’s length a fist is about 10, a spread hand 20.";
        public const string LeftEdge = "Left edge";
        public const string RightEdge = "Right edge";
        public const string Aim = "Sight it with this device";
        public const string AimedDown = "The device was aimed level or below the horizon; hold it upright, with its back to the top.";
        public const string Falls = "Its shadow falls on";
        public const string OnFacade = "the facade";
        public const string OnCamera = "the camera";
        public const string OnBoth = "both";
        public const string Add = "Add what hides the sun";
        public const string Another = "Add another";
        public const string Remove = "Remove it";
        private const string Nameless = "something in its way";

        public static string Nth(int number) => string.Create(CultureInfo.CurrentCulture, $"Number {number} in the sun’s way");

        public static string NameOf(PlaceShade shade) => string.IsNullOrWhiteSpace(shade.Name) ? Nameless : shade.Name.Trim();

        public static string Line(PlaceShade shade)
        {
            var name = NameOf(shade);
            var where = shade.Falls switch
            {
                ShadeFalls.OnCamera => "shades the camera",
                ShadeFalls.OnBoth => "shades the facade and the camera",
                _ => "shades the facade",
            };
            return string.Create(
                CultureInfo.CurrentCulture,
                $"{char.ToUpper(name[0], CultureInfo.CurrentCulture)}{name[1..]} {where} while the sun is between {shade.LeftDegrees:0.#}° and {shade.RightDegrees:0.#}° and lower than {shade.TopDegrees:0.#}°.");
        }
    }
}
