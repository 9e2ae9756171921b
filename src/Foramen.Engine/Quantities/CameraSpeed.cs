namespace Foramen.Engine.Quantities;

/// <summary>Arithmetic ISO speed or sensitivity set on a digital camera or a meter (ISO 12232, ISO 2720).</summary>
/// <remarks>Range 0.01 to 1e7 ; anything else is refused. The default value (zero) is not a valid one and is never produced by a factory. Ordered by size. Immutable.</remarks>
public readonly record struct CameraSpeed : IComparable<CameraSpeed>
{
    /// <summary>Smallest value accepted, in ISO units.</summary>
    public const double Min = 0.01;

    /// <summary>Largest value accepted, in ISO units.</summary>
    public const double Max = 1e7;

    private CameraSpeed(double value) => Iso = value;

    /// <summary>The value in ISO units.</summary>
    public double Iso { get; }

    /// <summary>From a number in ISO units.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static CameraSpeed FromIso(double value) => new(Guard.Within(value, Min, Max, "the ISO setting", ""));

    /// <inheritdoc/>
    public int CompareTo(CameraSpeed other) => Iso.CompareTo(other.Iso);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(CameraSpeed left, CameraSpeed right) => left.Iso < right.Iso;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(CameraSpeed left, CameraSpeed right) => left.Iso <= right.Iso;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(CameraSpeed left, CameraSpeed right) => left.Iso > right.Iso;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(CameraSpeed left, CameraSpeed right) => left.Iso >= right.Iso;

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Iso:0.####} ".TrimEnd();
}
