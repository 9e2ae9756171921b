using System.Text.Json;
using System.Text.Unicode;
using Foramen.Engine.Quantities;

namespace Foramen.Exchange.Places;

/// <summary>Reads places from JSON, GeoJSON or GPX, told apart by their content, within bounds of size and number.</summary>
public static class PlaceFile
{
    /// <summary>Largest file read, bytes.</summary>
    public const int LargestBytes = 8 << 20;

    /// <summary>Most places in a file.</summary>
    public const int MostPlaces = 5000;

    /// <summary>Reads places.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <exception cref="RefusalException">Too large, not one of the three formats, or without a place.</exception>
    public static IReadOnlyList<PlaceRecord> Read(ReadOnlyMemory<byte> bytes)
    {
        if (bytes.Length > LargestBytes)
        {
            throw new RefusalException($"The file of places is larger than {LargestBytes >> 20} MB; take only the places of the outing.");
        }

        var start = bytes.Span;
        start = start.StartsWith("\uFEFF"u8) ? start[3..] : start;
        var first = start.TrimStart(" \t\r\n"u8);
        IReadOnlyList<PlaceRecord> places = first.Length == 0 ? throw new RefusalException("The file of places is empty.")
            : first[0] == (byte)'<' ? GpxPlaces.Read(bytes)
            : first[0] is (byte)'{' or (byte)'[' ? ReadJson(bytes[^start.Length..])
            : throw new RefusalException("The file of places is neither JSON, GeoJSON nor GPX; save it as one of these.");
        return places.Count switch
        {
            0 => throw new RefusalException("The file holds no place."),
            > MostPlaces => throw new RefusalException($"The file holds more than {MostPlaces} places; take only those of the outing."),
            _ => places,
        };
    }

    private static IReadOnlyList<PlaceRecord> ReadJson(ReadOnlyMemory<byte> bytes)
    {
        if (!Utf8.IsValid(bytes.Span))
        {
            throw new RefusalException("The file of places holds bytes that are no UTF-8 text; save it as UTF-8.");
        }

        try
        {
            using var document = JsonDocument.Parse(bytes, new JsonDocumentOptions { MaxDepth = 32 });
            var root = document.RootElement;
            if (root.ValueKind == JsonValueKind.Object && root.TryGetProperty("type", out _))
            {
                return GeoJsonPlaces.Read(root);
            }

            if (root.ValueKind == JsonValueKind.Object && root.TryGetProperty("places", out _))
            {
                return root.Deserialize(PlaceJson.Default.PlaceList)?.Places ?? [];
            }

            throw new RefusalException("The file is JSON but no list of places; write {\"places\": [...]} or GeoJSON.");
        }
        catch (InvalidOperationException failure)
        {
            // Half a surrogate pair, written as an escape, is the one text that is valid JSON and no string.
            throw new RefusalException("The file of places holds an escape that stands for no letter; write the letter itself.", failure);
        }
        catch (JsonException failure)
        {
            var line = failure.LineNumber is { } number ? $" at line {number + 1}" : "";
            // The reader's words quote the file, line breaks and all.
            var words = string.Join(' ', failure.Message.Split(" Path:")[0].Split(" LineNumber")[0].Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');
            throw new RefusalException($"The file of places cannot be read{line}: {words}.", failure);
        }
    }
}
