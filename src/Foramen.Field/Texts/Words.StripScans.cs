using Foramen.Field.Units;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>A strip read on a scan or photograph.</summary>
    public static class StripScans
    {
        public const string Title = "Read it on a picture";
        public const string Open = "Read it on a scan or photograph";
        public const string About = "Scan the dry strip, or photograph it flat in even light without glare, with some room around it and every automatic correction off. Of a colour picture the brightness is read: 30 % red, 59 % green, 11 % blue.";
        public const string Choose = "Choose the picture";
        public const string Reading = "Reading the picture…";
        public const string Picture = "The picture of the strip. Touch it to place a mark; arrow keys move the chosen mark, with Shift in small steps, Enter goes on to the next.";
        public const string Touch = "The next touch places";
        public const string WhiteDensity = "Density of the white";
        public const string WhiteHint = "Paper white as the box is described, or any light grey of known density";
        public const string BlackDensity = "Density of the black";
        public const string BlackHint = "Without a black, deep tones read too light";
        public const string Edge = "Paper white along the top";
        public const string EdgeHint = "Part of the marked height; it corrects uneven light";
        public const string Densities = "Densities";
        public const string None = "Once four corners and a white are touched, the densities stand here.";
        public const string Keep = "Keep these densities";
        public const string KeepDetail = "What was read by eye stays";

        public const string White = "White";
        public const string Black = "Black";
        public const string TouchUpperLeast = "Touch the upper corner at patch 1, the one with the least light.";
        public const string TouchLowerLeast = "Touch the lower corner at patch 1.";
        public const string TouchWhite = "Touch paper white, or a light grey of known density.";
        public const string TouchBlack = "Touch full black, or a dark grey of known density. It may be left out.";

        public static string Corner(int number) => $"Corner {number}";

        public static string TouchUpperMost(int patches) => $"Touch the upper corner at patch {patches}, the one with the most light.";

        public static string TouchLowerMost(int patches) => $"Touch the lower corner at patch {patches}.";

        public static string Density(double density) => NumberText.Show(density);
    }
}
