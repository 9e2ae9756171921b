namespace Foramen.Field.Texts;

/// <summary>Every English text that Field shows, by place. Nothing else in Field holds sentences.</summary>
public static partial class Words
{
    public const string App = "Foramen";
    public const string Loading = "Opening the journal…";
    public const string NotFound = "There is nothing at this address.";
    public const string Unexpected = "Something went wrong that Foramen did not expect. What was saved is safe.";
    public const string StartAgain = "Start again";
    public const string SkipToContent = "Skip to content";
    public const string Why = "Why";
    public const string Cancel = "Cancel";
    public const string Save = "Save";
    public const string Places = "Places";
    public const string Outing = "Outing";
    public const string Sheet = "Sheet";
    public const string Bench = "Bench";
    public const string Ledger = "Ledger";
    public const string Settings = "Settings";
}
