namespace Foramen.Rehearsal.Worlds;

/// <summary>Which models a world may draw its truth from.</summary>
public enum WorldFamily
{
    /// <summary>Those that were looked at while the advice was built.</summary>
    Usual,

    /// <summary>Another curve, failure, cloud process and chemistry, kept apart: never looked at while the advice was built.</summary>
    HeldOut,
}
