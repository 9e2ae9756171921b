namespace Foramen.Field.Components;

/// <summary>How large numerals are.</summary>
public enum NumeralSize
{
    /// <summary>One of several on a page.</summary>
    Large,

    /// <summary>The one that counts, readable at arm's length.</summary>
    Huge,
}
