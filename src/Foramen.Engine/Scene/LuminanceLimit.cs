namespace Foramen.Engine.Scene;

/// <summary>Whether a luminance read from a photograph is the thing itself or only bounds it.</summary>
public enum LuminanceLimit : byte
{
    /// <summary>Within the photograph's range.</summary>
    Exact,

    /// <summary>Blown: the true luminance is this or more.</summary>
    AtLeast,

    /// <summary>Blocked: the true luminance is this or less.</summary>
    AtMost,
}
