using System.Text.Json;

namespace Foramen.Journal;

/// <summary>Names and texts of JSON from outside.</summary>
internal static class JsonText
{
    /// <summary>
    /// The text that a reader stands at; null where it is half a character pair, written as an escape: such JSON is valid, but no reader could find anything by that text.
    /// <see cref="Utf8JsonReader.ValueTextEquals(string)"/> throws there.
    /// </summary>
    public static string? OrNull(ref Utf8JsonReader reader)
    {
        try
        {
            return reader.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }
}
