using System.Globalization;

namespace Foramen.Storage;

/// <summary>A state of the store: everything that had arrived up to here.</summary>
/// <param name="Arrival">The last arrival; 0 at the beginning.</param>
/// <param name="Mark">What the append that brought it had drawn.</param>
public readonly record struct StoreCursor(long Arrival, long Mark)
{
    /// <summary>Reads the text form; anything else is the beginning.</summary>
    public static StoreCursor Parse(string? text)
    {
        var parts = (text ?? "").Split('.');
        return parts.Length == 2 && long.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var arrival)
            && long.TryParse(parts[1], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var mark)
            ? new StoreCursor(arrival, mark)
            : default;
    }

    /// <summary>The text form; empty at the beginning.</summary>
    public override string ToString() => Arrival == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{Arrival}.{Mark:x16}");
}
