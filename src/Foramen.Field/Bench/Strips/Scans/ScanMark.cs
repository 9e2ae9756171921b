namespace Foramen.Field.Bench.Strips.Scans;

/// <summary>What is touched on a picture of a strip, in this order; corners by patches in the order of rising exposure.</summary>
public enum ScanMark
{
    /// <summary>Upper corner at the least exposed patch.</summary>
    UpperLeast,

    /// <summary>Upper corner at the most exposed patch.</summary>
    UpperMost,

    /// <summary>Lower corner at the most exposed patch.</summary>
    LowerMost,

    /// <summary>Lower corner at the least exposed patch.</summary>
    LowerLeast,

    /// <summary>Paper white, or a light grey of known density.</summary>
    White,

    /// <summary>Full black, or a dark grey of known density; may be left out.</summary>
    Black,
}
