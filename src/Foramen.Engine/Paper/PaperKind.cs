namespace Foramen.Engine.Paper;

/// <summary>How a paper answers light.</summary>
public enum PaperKind
{
    /// <summary>More light, darker sheet: the sheet is a negative, to be contact-printed or inverted.</summary>
    NegativeWorking,

    /// <summary>More light, lighter sheet: the sheet is the picture.</summary>
    DirectPositive,
}
