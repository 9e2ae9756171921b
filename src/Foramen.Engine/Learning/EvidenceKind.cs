namespace Foramen.Engine.Learning;

/// <summary>Where evidence comes from.</summary>
public enum EvidenceKind
{
    /// <summary>A sheet judged by eye.</summary>
    JudgedSheet,

    /// <summary>A sheet whose densities were measured.</summary>
    Scan,

    /// <summary>A test strip.</summary>
    Strip,
}
