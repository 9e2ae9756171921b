namespace Foramen.Rehearsal.Worlds;

/// <summary>Hidden laws of failure. Schwarzschild's is not among them.</summary>
internal enum FailureFamily
{
    /// <summary>Kron's catenary in lg time.</summary>
    Catenary,

    /// <summary>A loss that grows with the square of lg time.</summary>
    Quadratic,

    /// <summary>t = m + a·m^q with its own q.</summary>
    Additive,

    /// <summary>None up to some time, then a bend.</summary>
    Bent,
}
