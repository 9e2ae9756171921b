using Foramen.Field.Texts;

namespace Foramen.Field.Sheets.Process;

/// <summary>What the hand does, as the screen says it.</summary>
public static class AgitationText
{
    /// <summary>The words.</summary>
    public static string Of(AgitationAction action) => action switch
    {
        AgitationAction.Move => Words.Process.Move,
        AgitationAction.Rest => Words.Process.Rest,
        AgitationAction.FreshWater => Words.Process.FreshWater,
        _ => Words.Process.Drain,
    };
}
