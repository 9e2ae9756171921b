namespace Foramen.Field.Settings;

/// <summary>The look.</summary>
public enum Theme
{
    /// <summary>Ink on paper, for the sun.</summary>
    Paper,

    /// <summary>Light on dark.</summary>
    Night,

    /// <summary>Dim red, for the dark.</summary>
    Red,
}
