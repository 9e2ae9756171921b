namespace Foramen.Engine.Scene;

/// <summary>How a tone is wanted on the finished print.</summary>
public enum Rendering
{
    /// <summary>A shadow in which something can still be seen.</summary>
    OpenShadow,

    /// <summary>A middle grey.</summary>
    Mid,

    /// <summary>A highlight with texture in it.</summary>
    TexturedHighlight,

    /// <summary>Bright; it may go without separation.</summary>
    MayBurn,

    /// <summary>Dark; it may go without separation.</summary>
    MayBlock,
}
