namespace Foramen.Engine.Camera;

/// <summary>How the sheet stands in the finished picture.</summary>
public enum SheetFormat
{
    /// <summary>Long side horizontal.</summary>
    Level,

    /// <summary>Long side vertical.</summary>
    Upright,
}
