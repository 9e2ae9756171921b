namespace Foramen.Engine.Learning;

/// <summary>One thing that is believed in.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Of">Which box, camera or sky; empty where there is only one.</param>
public readonly record struct BeliefKey(BeliefKind Kind, string Of) : IComparable<BeliefKey>
{
    /// <inheritdoc/>
    public int CompareTo(BeliefKey other)
        => Kind != other.Kind ? Kind.CompareTo(other.Kind) : string.CompareOrdinal(Of, other.Of);

    /// <summary>Whether the left comes first.</summary>
    public static bool operator <(BeliefKey left, BeliefKey right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left comes first or is the same.</summary>
    public static bool operator <=(BeliefKey left, BeliefKey right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left comes later.</summary>
    public static bool operator >(BeliefKey left, BeliefKey right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left comes later or is the same.</summary>
    public static bool operator >=(BeliefKey left, BeliefKey right) => left.CompareTo(right) >= 0;
}
