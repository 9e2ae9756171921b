using System.Buffers;
using Foramen.Engine.Quantities;

namespace Foramen.Journal;

/// <summary>
/// The device that wrote an entry: 1 to 64 letters, digits, dots, dashes and underscores (ASCII), drawn once for each installation and never
/// used again. Ordered by character code.
/// </summary>
public sealed record DeviceId : IComparable<DeviceId>
{
    private const int MaxLength = 64;

    private static readonly SearchValues<char> Allowed =
        SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.-_");

    private DeviceId(string text) => Text = text;

    /// <summary>The id as text.</summary>
    public string Text { get; }

    /// <summary>A device from its id.</summary>
    /// <exception cref="RefusalException">Empty, longer than 64 characters, or with other characters.</exception>
    public static DeviceId Parse(string text) => TryParse(text) ?? throw new RefusalException(
        "A device's id has 1 to 64 letters, digits, dots, dashes and underscores.");

    /// <summary>A device from its id; null if the text is not one.</summary>
    public static DeviceId? TryParse(string? text)
        => text is { Length: > 0 and <= MaxLength } && !text.AsSpan().ContainsAnyExcept(Allowed) ? new DeviceId(text) : null;

    /// <inheritdoc/>
    public int CompareTo(DeviceId? other) => string.CompareOrdinal(Text, other?.Text);

    /// <summary>Whether the left comes first.</summary>
    public static bool operator <(DeviceId left, DeviceId right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left comes first, or both are the same.</summary>
    public static bool operator <=(DeviceId left, DeviceId right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left comes last.</summary>
    public static bool operator >(DeviceId left, DeviceId right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left comes last, or both are the same.</summary>
    public static bool operator >=(DeviceId left, DeviceId right) => left.CompareTo(right) >= 0;

    /// <summary>The id as text.</summary>
    public override string ToString() => Text;
}
