namespace Foramen.Field.Storage;

/// <summary>Why nothing was written.</summary>
public enum StoreRefusal
{
    /// <summary>The browser keeps no data for this page (a private window, or storage switched off).</summary>
    Unavailable,

    /// <summary>There is no room.</summary>
    Full,

    /// <summary>Another tab holds an older version of the store open.</summary>
    Blocked,

    /// <summary>The write failed for another reason.</summary>
    Failed,
}
