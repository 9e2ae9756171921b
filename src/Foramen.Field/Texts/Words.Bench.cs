namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The Bench place.</summary>
    public static class Gear
    {
        public const string Title = "Bench";
        public const string Cameras = "Cameras";
        public const string Papers = "Papers";
        public const string NoCameras = "No camera yet.";
        public const string NoPapers = "No paper yet.";
        public const string AddCamera = "Add a camera";
        public const string AddPaper = "Add a paper";
        public const string Measure = "Measure, aim and mask";
        public const string Name = "Name";
        public const string Hole = "Hole, diameter";
        public const string HoleHint = "Measured on a scan if you can";
        public const string Focal = "Hole to paper";
        public const string Width = "Sheet, width";
        public const string Height = "Sheet, height";
        public const string Shape = "Paper lies";
        public const string Flat = "Flat";
        public const string Curved = "Curved";
        public const string WallRadius = "Radius of the wall";
        public const string WallHint = "Half the tin's inner diameter";
        public const string Kind = "Kind";
        public const string Negative = "Negative";
        public const string Positive = "Direct positive";
        public const string StartingValues = "Starting values for a paper nobody has measured: they may be most of a stop out. A test strip or the first judged sheets put them right.";
        public const string EmptyName = "It needs a name: a word or two.";
    }
}
