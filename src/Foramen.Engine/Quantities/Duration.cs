namespace Foramen.Engine.Quantities;

/// <summary>A span of time: an exposure, a flash, a bath.</summary>
/// <remarks>Range 0 to 1e7 s; anything else is refused. The default value is zero. Ordered by size. Immutable.</remarks>
public readonly record struct Duration : IComparable<Duration>
{
    /// <summary>Smallest value accepted, in seconds.</summary>
    public const double Min = 0;

    /// <summary>Largest value accepted, in seconds.</summary>
    public const double Max = 1e7;

    private Duration(double value) => Seconds = value;

    /// <summary>The value in seconds.</summary>
    public double Seconds { get; }

    /// <summary>From a number in seconds.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Duration FromSeconds(double value) => new(Guard.Within(value, Min, Max, "the time", "s"));

    /// <summary>From a number in minutes.</summary>
    /// <exception cref="RefusalException">Not a finite number in the range.</exception>
    public static Duration FromMinutes(double value) => new(Guard.Within(value, Min, Max / 60, "the time", "min") * 60);

    /// <inheritdoc/>
    public int CompareTo(Duration other) => Seconds.CompareTo(other.Seconds);

    /// <summary>Whether the left is smaller.</summary>
    public static bool operator <(Duration left, Duration right) => left.Seconds < right.Seconds;

    /// <summary>Whether the left is smaller or equal.</summary>
    public static bool operator <=(Duration left, Duration right) => left.Seconds <= right.Seconds;

    /// <summary>Whether the left is larger.</summary>
    public static bool operator >(Duration left, Duration right) => left.Seconds > right.Seconds;

    /// <summary>Whether the left is larger or equal.</summary>
    public static bool operator >=(Duration left, Duration right) => left.Seconds >= right.Seconds;

    /// <summary>
    /// In words for what is known to a part of itself only: whole seconds below two minutes, whole minutes below two hours, whole hours from there on.
    /// </summary>
    public string ToRoughText() => Math.Round(Seconds) < 120 ? $"{Seconds:0} s"
        : Math.Round(Seconds / 60) < 120 ? $"{Seconds / 60:0} min"
        : $"{Seconds / 3600:0} h";

    /// <summary>The value with its unit, in the current culture.</summary>
    public override string ToString() => $"{Seconds:0.####} s".TrimEnd();
}
