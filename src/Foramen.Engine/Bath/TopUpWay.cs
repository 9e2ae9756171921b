namespace Foramen.Engine.Bath;

/// <summary>How a bottle is topped up.</summary>
public enum TopUpWay
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>Only what was lost is replaced; nothing is poured away, so by-products stay.</summary>
    OnlyLoss,

    /// <summary>More than was lost is added, and used developer poured away to make room.</summary>
    Refresh,
}
