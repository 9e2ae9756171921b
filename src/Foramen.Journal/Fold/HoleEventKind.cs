namespace Foramen.Journal.Fold;

/// <summary>What happened at the hole.</summary>
public enum HoleEventKind
{
    /// <summary>It was opened.</summary>
    Opened,

    /// <summary>The light changed, or the hole was covered or uncovered.</summary>
    LightChanged,

    /// <summary>It was closed.</summary>
    Closed,
}
