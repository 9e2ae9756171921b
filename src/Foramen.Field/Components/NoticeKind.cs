
namespace Foramen.Field.Components;

/// <summary>What a notice is about.</summary>
public enum NoticeKind
{
    /// <summary>Good to know; read out when there is a pause.</summary>
    Status,

    /// <summary>A danger to people, or to the sheet.</summary>
    Caution,

    /// <summary>What was asked for did not happen; read out at once.</summary>
    Refusal,
}
