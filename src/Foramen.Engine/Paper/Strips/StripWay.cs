namespace Foramen.Engine.Paper;

/// <summary>How the patches of a strip get their different times.</summary>
public enum StripWay
{
    /// <summary>In the camera or under a shutter: the hole is closed for every move of the card, and the openings add up.</summary>
    HoleAsShutter,

    /// <summary>Under steady light: everything lies open at first, and a card covers patch after patch.</summary>
    Covering,

    /// <summary>Under steady light: everything lies covered at first, and a card uncovers patch after patch.</summary>
    Uncovering,
}
