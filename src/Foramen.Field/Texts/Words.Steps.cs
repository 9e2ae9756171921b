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

        public static string Next(SheetStep step) => $"On to {Name(step)}";

        public const string NoSuchSheet = "This sheet is not in the journal of this device.";
        public const string NoSuchStep = "A sheet has no such step.";
    }
}
