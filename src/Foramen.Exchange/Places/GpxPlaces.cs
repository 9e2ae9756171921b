using System.Globalization;
using System.Xml;
using Foramen.Engine.Quantities;

namespace Foramen.Exchange.Places;

/// <summary>
/// Places as waypoints of GPX 1.1 (topografix.com/GPX/1/1): position, height, name and note. What a camera faces has no place in GPX and is not
/// written. Read without any document type or entity.
/// </summary>
public static class GpxPlaces
{
    private const string Namespace = "http://www.topografix.com/GPX/1/1";

    /// <summary>Writes waypoints.</summary>
    /// <exception cref="RefusalException">A place without a position.</exception>
    public static void Write(Stream into, IReadOnlyList<PlaceRecord> places)
    {
        using var writer = XmlWriter.Create(into, new XmlWriterSettings { Indent = true, CloseOutput = false });
        writer.WriteStartDocument();
        writer.WriteStartElement("gpx", Namespace);
        writer.WriteAttributeString("version", "1.1");
        writer.WriteAttributeString("creator", "Foramen");
        foreach (var place in places)
        {
            if (place.LatitudeDeg is not { } latitude || place.LongitudeDeg is not { } longitude)
            {
                throw new RefusalException($"{place.Name} has no position, so it cannot be written as GPX.");
            }

            writer.WriteStartElement("wpt", Namespace);
            writer.WriteAttributeString("lat", Number(latitude));
            writer.WriteAttributeString("lon", Number(longitude));
            if (place.ElevationMetres is { } elevation)
            {
                writer.WriteElementString("ele", Namespace, Number(elevation));
            }

            writer.WriteElementString("name", Namespace, Clean(place.Name ?? ""));
            if (!string.IsNullOrWhiteSpace(place.Note))
            {
                writer.WriteElementString("desc", Namespace, Clean(place.Note));
            }

            writer.WriteEndElement();
        }

        writer.WriteEndElement();
        writer.WriteEndDocument();
    }

    internal static IReadOnlyList<PlaceRecord> Read(ReadOnlyMemory<byte> bytes)
    {
        try
        {
            using var stream = new MemoryStream(bytes.ToArray(), writable: false);
            using var reader = XmlReader.Create(stream, new XmlReaderSettings
            {
                DtdProcessing = DtdProcessing.Prohibit,
                XmlResolver = null,
                MaxCharactersInDocument = PlaceFile.LargestBytes,
                IgnoreComments = true,
                IgnoreProcessingInstructions = true,
            });
            reader.MoveToContent();
            if (reader.LocalName != "gpx")
            {
                throw new RefusalException($"The file is XML but no GPX: it begins with <{reader.LocalName}>.");
            }

            var places = new List<PlaceRecord>();
            while (reader.Read() && places.Count <= PlaceFile.MostPlaces)
            {
                if (reader is { NodeType: XmlNodeType.Element, LocalName: "wpt", Depth: 1 })
                {
                    places.Add(Waypoint(reader, places.Count + 1));
                }
            }

            return places;
        }
        catch (XmlException failure)
        {
            var line = failure.LineNumber > 0 ? $" at line {failure.LineNumber}" : "";
            throw new RefusalException($"The GPX cannot be read{line}; it is damaged or holds what no GPX needs, such as a document type.", failure);
        }
    }

    private static PlaceRecord Waypoint(XmlReader reader, int number)
    {
        double Coordinate(string name) => double.TryParse(reader.GetAttribute(name), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : throw new RefusalException($"Waypoint {number} of the GPX has no {name}; a waypoint is written as <wpt lat=\"52.5\" lon=\"5.25\">.");
        var place = new PlaceRecord { Name = $"place {number}", LatitudeDeg = Coordinate("lat"), LongitudeDeg = Coordinate("lon") };
        if (reader.IsEmptyElement)
        {
            return place;
        }

        using var inside = reader.ReadSubtree();
        inside.Read();
        inside.Read();
        while (!inside.EOF)
        {
            if (inside is not { NodeType: XmlNodeType.Element, Depth: 1 })
            {
                inside.Read();
                continue;
            }

            switch (inside.LocalName)
            {
                case "name":
                    place = inside.ReadElementContentAsString().Trim() is { Length: > 0 } name ? place with { Name = name.Length > 80 ? name[..80] : name } : place;
                    break;
                case "desc":
                    place = place with { Note = inside.ReadElementContentAsString().Trim() };
                    break;
                case "ele":
                    place = double.TryParse(inside.ReadElementContentAsString(), NumberStyles.Float, CultureInfo.InvariantCulture, out var metres) && double.IsFinite(metres)
                        ? place with { ElevationMetres = metres }
                        : throw new RefusalException($"The height of waypoint {number} of the GPX is no number.");
                    break;
                default:
                    inside.Skip();
                    break;
            }
        }

        return place;
    }

    private static string Number(double value) => value.ToString("0.########", CultureInfo.InvariantCulture);

    // Characters that XML cannot hold at all are left out.
    private static string Clean(string text) => string.Concat(text.Where(XmlConvert.IsXmlChar));
}
