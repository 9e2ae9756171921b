namespace Foramen.Engine.Bath;

/// <summary>What fixes, and at what strength.</summary>
public enum FixerKind
{
    /// <summary>Ammonium thiosulphate as strong as for film.</summary>
    AmmoniumStrong,

    /// <summary>Ammonium thiosulphate at the weaker strength for paper.</summary>
    AmmoniumPaper,

    /// <summary>Sodium thiosulphate.</summary>
    Sodium,
}
