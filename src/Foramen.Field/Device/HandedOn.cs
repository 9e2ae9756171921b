namespace Foramen.Field.Device;

/// <summary>What became of a file that was handed on.</summary>
public enum HandedOn
{
    /// <summary>The share sheet took it.</summary>
    Shared,

    /// <summary>It was saved as a download.</summary>
    Saved,

    /// <summary>The user closed the share sheet.</summary>
    Stopped,
}
