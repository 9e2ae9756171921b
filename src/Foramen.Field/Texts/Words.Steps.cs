using Foramen.Journal.Fold;

namespace Foramen.Field.Texts;

public static partial class Words
{
    /// <summary>The steps of a sheet's life.</summary>
    public static class Steps
    {
        public const string Rail = "Steps of this sheet";

        public static string Name(SheetStep step) => step switch
        {
            SheetStep.Frame => "Frame",
            SheetStep.Meter => "Meter",
            SheetStep.Plan => "Plan",
            SheetStep.Flash => "Flash",
            SheetStep.Expose => "Expose",
            SheetStep.Process => "Process",
            SheetStep.Judge => "Judge",
            _ => "Done",
        };

        public static string About(SheetStep step) => step switch
        {
            SheetStep.Frame => "What the sheet will see",
            SheetStep.Meter => "How bright the tones are",
            SheetStep.Plan => "How long, and how much flash",
            SheetStep.Flash => "Light on the whole sheet first",
            SheetStep.Expose => "Open the hole and keep the tally",
            SheetStep.Process => "Developer, stop, fix, wash",
            SheetStep.Judge => "How it came out",
            _ => "Judged",
        };

        public static string Next(SheetStep step) => $"On to {Name(step)}";

        public const string Soon = "This step is not built yet.";
        public const string NoSuchSheet = "This sheet is not in the journal of this device.";
        public const string NoSuchStep = "A sheet has no such step.";
    }
}
