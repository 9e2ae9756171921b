namespace Foramen.Field.Sheets.Flash;

/// <summary>What the flash is pointed at: something even, without detail.</summary>
public enum FlashTarget
{
    /// <summary>A white or grey card held before the hole.</summary>
    Card,

    /// <summary>A plain wall.</summary>
    Wall,

    /// <summary>A wholly clouded sky.</summary>
    Cloud,
}
