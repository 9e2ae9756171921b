using System.Text.Json;
using Foramen.Engine.Quantities;

namespace Foramen.Exchange.Places;

/// <summary>Places as GeoJSON points (RFC 7946): longitude first, WGS 84; what else is known of a place are the feature's properties.</summary>
public static class GeoJsonPlaces
{
    private static readonly string[] InGeometry = ["latitudeDeg", "longitudeDeg", "elevationMetres"];

    /// <summary>Writes a feature collection.</summary>
    /// <exception cref="RefusalException">A place without a position.</exception>
    public static void Write(Stream into, IReadOnlyList<PlaceRecord> places)
    {
        using var writer = new Utf8JsonWriter(into, new JsonWriterOptions { Indented = true });
        writer.WriteStartObject();
        writer.WriteString("type", "FeatureCollection");
        writer.WriteStartArray("features");
        foreach (var place in places)
        {
            if (place.LatitudeDeg is not { } latitude || place.LongitudeDeg is not { } longitude)
            {
                throw new RefusalException($"{place.Name} has no position, so it cannot be written as GeoJSON.");
            }

            writer.WriteStartObject();
            writer.WriteString("type", "Feature");
            writer.WriteStartObject("geometry");
            writer.WriteString("type", "Point");
            writer.WriteStartArray("coordinates");
            writer.WriteNumberValue(longitude);
            writer.WriteNumberValue(latitude);
            if (place.ElevationMetres is { } elevation)
            {
                writer.WriteNumberValue(elevation);
            }

            writer.WriteEndArray();
            writer.WriteEndObject();
            writer.WriteStartObject("properties");
            foreach (var property in JsonSerializer.SerializeToElement(place, PlaceJson.Default.PlaceRecord).EnumerateObject())
            {
                if (!InGeometry.Contains(property.Name))
                {
                    property.WriteTo(writer);
                }
            }

            writer.WriteEndObject();
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    internal static IReadOnlyList<PlaceRecord> Read(JsonElement root)
    {
        var features = root.GetProperty("type") is { ValueKind: JsonValueKind.String } type ? type.GetString() switch
        {
            "FeatureCollection" when root.TryGetProperty("features", out var list) && list.ValueKind == JsonValueKind.Array => list.EnumerateArray().ToList(),
            "Feature" => [root],
            _ => throw new RefusalException("The GeoJSON is neither a feature nor a collection of features."),
        }
        : throw new RefusalException("The type of the GeoJSON is no text.");
        var places = new List<PlaceRecord>();
        foreach (var feature in features)
        {
            if (feature.ValueKind != JsonValueKind.Object || !feature.TryGetProperty("geometry", out var geometry)
                || geometry.ValueKind != JsonValueKind.Object || !geometry.TryGetProperty("type", out var kind)
                || kind.ValueKind != JsonValueKind.String || kind.GetString() != "Point")
            {
                // Tracks and areas may lie beside the points.
                continue;
            }

            var at = geometry.TryGetProperty("coordinates", out var found) && found.ValueKind == JsonValueKind.Array
                ? found.EnumerateArray().Select(one => one.ValueKind == JsonValueKind.Number ? one.GetDouble() : double.NaN).ToList()
                : [];
            if (at.Count < 2 || !at.TrueForAll(double.IsFinite))
            {
                throw new RefusalException($"Feature {places.Count + 1} has no coordinates; a point is written as [longitude, latitude].");
            }

            var place = feature.TryGetProperty("properties", out var properties) && properties.ValueKind == JsonValueKind.Object
                ? properties.Deserialize(PlaceJson.Default.PlaceRecord)!
                : new PlaceRecord();
            places.Add(place with
            {
                Name = place.Name ?? $"place {places.Count + 1}",
                LongitudeDeg = at[0],
                LatitudeDeg = at[1],
                ElevationMetres = at.Count > 2 ? at[2] : null,
            });
        }

        return places;
    }
}
