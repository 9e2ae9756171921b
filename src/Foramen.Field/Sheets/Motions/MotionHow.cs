namespace Foramen.Field.Sheets.Motions;

/// <summary>How something moves, in the words of the journal.</summary>
public static class MotionHow
{
    public const string Turns = "turns";
    public const string GoesAway = "goesAway";
    public const string Passes = "passes";
    public const string Sways = "sways";
    public const string Flows = "flows";
    public const string Lamp = "lamp";

    /// <summary>All, in the order they are offered.</summary>
    public static IReadOnlyList<string> All { get; } = [GoesAway, Turns, Passes, Sways, Flows, Lamp];
}
