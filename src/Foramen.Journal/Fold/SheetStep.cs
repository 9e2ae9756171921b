namespace Foramen.Journal.Fold;

/// <summary>Where a sheet is in its life: the step to go on with.</summary>
public enum SheetStep
{
    /// <summary>Choose the frame.</summary>
    Frame,

    /// <summary>Read the tones.</summary>
    Meter,

    /// <summary>Decide time and flash.</summary>
    Plan,

    /// <summary>Give the flash.</summary>
    Flash,

    /// <summary>Open the hole; or it is open.</summary>
    Expose,

    /// <summary>Process the sheet.</summary>
    Process,

    /// <summary>Judge the print.</summary>
    Judge,

    /// <summary>Judged.</summary>
    Done,
}
