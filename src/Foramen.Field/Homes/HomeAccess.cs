namespace Foramen.Field.Homes;

/// <summary>How this device stands with the Home behind its address.</summary>
public enum HomeAccess
{
    /// <summary>Not asked yet, or never reached.</summary>
    Unknown,

    /// <summary>There is no Home that keeps a journal.</summary>
    None,

    /// <summary>There is one, and this device must be paired first.</summary>
    Needed,

    /// <summary>It runs on this machine.</summary>
    Own,

    /// <summary>This device is paired with it.</summary>
    Paired,
}
