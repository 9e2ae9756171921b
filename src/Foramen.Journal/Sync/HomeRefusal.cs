namespace Foramen.Journal.Sync;

/// <summary>Why a meeting with Home ended early. What was acknowledged until then stays.</summary>
public enum HomeRefusal
{
    /// <summary>There is no network, or nobody answers.</summary>
    Away,

    /// <summary>The connection was cut in the middle.</summary>
    CutShort,

    /// <summary>The device is not paired, or its token was taken back.</summary>
    NotPaired,

    /// <summary>Home is busy, or its database is away for the moment.</summary>
    Busy,

    /// <summary>Home has no room left.</summary>
    Full,

    /// <summary>Home cannot read one of the entries.</summary>
    BadEntry,

    /// <summary>Anything else.</summary>
    Failed,
}
