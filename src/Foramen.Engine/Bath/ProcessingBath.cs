namespace Foramen.Engine.Bath;

/// <summary>A step of processing, in the order of use.</summary>
public enum ProcessingBath
{
    /// <summary>Developer.</summary>
    Developer,

    /// <summary>A rinse in water between developer and fixer.</summary>
    Rinse,

    /// <summary>Stop bath.</summary>
    Stop,

    /// <summary>Fixer.</summary>
    Fix,

    /// <summary>Wash.</summary>
    Wash,
}
