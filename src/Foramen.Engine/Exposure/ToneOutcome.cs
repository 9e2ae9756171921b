namespace Foramen.Engine.Exposure;

/// <summary>How a tone is expected to come out in the finished picture.</summary>
public enum ToneOutcome
{
    /// <summary>Inside the band of its rendering.</summary>
    AsWanted,

    /// <summary>Visible, but darker in the finished picture than its rendering allows.</summary>
    TooDark,

    /// <summary>Visible, but lighter in the finished picture than its rendering allows.</summary>
    TooLight,

    /// <summary>No visible separation from the lightest tone of the finished picture.</summary>
    Burnt,

    /// <summary>No visible separation from the darkest tone of the finished picture.</summary>
    Blocked,
}
