namespace Foramen.Pages.Checks;

/// <summary>What a <c>[Source]</c> says.</summary>
/// <param name="Key">Of docs/references.bib.</param>
/// <param name="At">The page, table, section or equation; may be empty.</param>
/// <param name="Basis">Printed, Worked, Memory or Library.</param>
public sealed record CitedSource(string Key, string At, string Basis)
{
    /// <summary>The key for what the trade does without a source.</summary>
    public const string CommonPractice = "common-practice";

    /// <summary>How the values were come by, in words.</summary>
    public string How => (Key, Basis) switch
    {
        (CommonPractice, _) => "**common practice, no source**",
        (_, "Memory") => "**from memory**",
        (_, "Worked") => "worked from it",
        (_, "Library") => "by that library",
        _ => "printed there",
    };
}
