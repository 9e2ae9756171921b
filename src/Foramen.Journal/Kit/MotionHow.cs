namespace Foramen.Journal.Kit;

/// <summary>How something moves, in the words of the journal.</summary>
public static class MotionHow
{
    /// <summary>Turns, as a wheel.</summary>
    public const string Turns = "turns";

    /// <summary>Goes away, or comes back.</summary>
    public const string GoesAway = "goesAway";

    /// <summary>Others pass through.</summary>
    public const string Passes = "passes";

    /// <summary>Goes to and fro in its place.</summary>
    public const string Sways = "sways";

    /// <summary>Drifts through, and more of the same follows.</summary>
    public const string Flows = "flows";

    /// <summary>A lamp goes through.</summary>
    public const string Lamp = "lamp";

    /// <summary>All, the most usual first.</summary>
    public static IReadOnlyList<string> All { get; } = [GoesAway, Turns, Passes, Sways, Flows, Lamp];
}
