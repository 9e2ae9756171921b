namespace Foramen.Engine.Learning;

/// <summary>What other than the tones can spoil a sheet.</summary>
public enum SheetLoss
{
    /// <summary>The frame: cut off, tilted.</summary>
    Frame,

    /// <summary>Something moved.</summary>
    Motion,

    /// <summary>Processing, stray light.</summary>
    Process,

    /// <summary>Anything else that was noticed; it spoils nothing by itself.</summary>
    Other,
}
