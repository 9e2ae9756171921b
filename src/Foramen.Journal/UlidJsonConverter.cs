using System.Text.Json;
using System.Text.Json.Serialization;

namespace Foramen.Journal;

/// <summary>An id as a JSON string.</summary>
public sealed class UlidJsonConverter : JsonConverter<Ulid>
{
    /// <inheritdoc/>
    public override Ulid Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        => reader.TokenType == JsonTokenType.String && Ulid.TryParse(reader.GetString(), out var id)
            ? id
            : throw new JsonException("An id of 26 characters of Crockford's base 32 was expected.");

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Ulid value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
