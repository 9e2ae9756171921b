using Foramen.Field.Texts;

namespace Foramen.Field.Sheets.Flash;

/// <summary>What a target of the flash is called, and how to point at it.</summary>
public static class FlashTargetText
{
    /// <summary>Its name.</summary>
    public static string NameOf(FlashTarget target) => target switch
    {
        FlashTarget.Card => Words.Flash.Card,
        FlashTarget.Wall => Words.Flash.Wall,
        _ => Words.Flash.Cloud,
    };

    /// <summary>How to point at it.</summary>
    public static string HowTo(FlashTarget target) => target switch
    {
        FlashTarget.Card => Words.Flash.CardHowTo,
        FlashTarget.Wall => Words.Flash.WallHowTo,
        _ => Words.Flash.CloudHowTo,
    };
}
