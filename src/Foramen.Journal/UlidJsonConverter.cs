using System.Text.Json;
using System.Text.Json.Serialization;

namespace Foramen.Journal;

/// <summary>An id as a JSON string.</summary>
public sealed class UlidJsonConverter : JsonConverter<Ulid>
{
    /// <inheritdoc/>
    public override Ulid Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        // Written as we write it, an id needs no text of its own.
        Span<char> text = stackalloc char[Ulid.TextLength];
        if (reader.TokenType == JsonTokenType.String && !reader.HasValueSequence && !reader.ValueIsEscaped && reader.ValueSpan.Length == Ulid.TextLength)
        {
            for (var i = 0; i < text.Length; i++)
            {
                text[i] = (char)reader.ValueSpan[i];
            }
        }
        else
        {
            var written = reader.TokenType == JsonTokenType.String ? reader.GetString()! : "";
            text = written.Length == Ulid.TextLength ? written.ToCharArray() : [];
        }

        return Ulid.TryParse(text, out var id) ? id : throw new JsonException("An id of 26 characters of Crockford's base 32 was expected.");
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Ulid value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
