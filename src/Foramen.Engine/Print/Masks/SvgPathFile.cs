using System.Text;
using System.Xml;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>
/// Takes the path data out of an SVG file and nothing else: elements <c>svg</c>, <c>g</c>, <c>path</c>, <c>title</c> and <c>desc</c>. Whatever could run, fetch, refer or
/// expand is refused, and so is what would have to be understood to draw it rightly.
/// </summary>
public static class SvgPathFile
{
    private const int MostBytes = 1_000_000;
    private const string Metadata = "metadata";

    private static readonly HashSet<string> Known = new(StringComparer.Ordinal) { "svg", "g", "path", "title", "desc" };

    /// <summary>The data of all paths in the file, joined.</summary>
    /// <param name="file">The file's bytes.</param>
    /// <exception cref="RefusalException">Too large, not XML, with anything refused, or without a path.</exception>
    public static string PathData(ReadOnlyMemory<byte> file)
    {
        if (file.Length > MostBytes)
        {
            throw new RefusalException($"The SVG file has {file.Length / 1000} kB; up to {MostBytes / 1000} kB are read, so simplify its paths.");
        }

        var data = new StringBuilder();
        try
        {
            using var stream = new MemoryStream(file.ToArray(), writable: false);
            using var reader = XmlReader.Create(stream, new XmlReaderSettings
            {
                DtdProcessing = DtdProcessing.Prohibit,
                XmlResolver = null,
                MaxCharactersInDocument = MostBytes,
                MaxCharactersFromEntities = 1024,
                IgnoreComments = true,
            });
            while (Next(reader))
            {
                if (reader.NodeType == XmlNodeType.ProcessingInstruction)
                {
                    throw new RefusalException("The SVG file has a processing instruction, such as a style sheet from elsewhere; save it as plain paths.");
                }

                if (reader.NodeType != XmlNodeType.Element)
                {
                    continue;
                }

                var element = reader.LocalName;
                if (element == Metadata || (element == "defs" && reader.IsEmptyElement))
                {
                    continue;
                }

                CheckElement(element);
                CheckAttributes(reader, data);
            }
        }
        catch (XmlException failure)
        {
            throw new RefusalException(
                failure.Message.Contains("DTD", StringComparison.Ordinal)
                    ? "The SVG file has a DOCTYPE, which can bring entities along; save it without one."
                    : $"The SVG file is not well-formed XML at line {failure.LineNumber}; save it again as plain SVG.",
                failure);
        }

        return data.Length > 0
            ? data.ToString()
            : throw new RefusalException("There is no path in the SVG file; turn its shapes and text into paths in your drawing program.");
    }

    // Descriptions by drawing programs, in namespaces of their own, are passed over whole; the reader then stands on what follows them.
    private static bool Next(XmlReader reader)
    {
        if (reader.NodeType != XmlNodeType.Element || reader.LocalName != Metadata)
        {
            return reader.Read();
        }

        reader.Skip();
        return !reader.EOF;
    }

    private static void CheckElement(string element)
    {
        if (!Known.Contains(element))
        {
            throw new RefusalException(element == "script"
                ? "The SVG file has a script; save it as plain paths."
                : $"The SVG file has a <{(element.Length <= 30 ? element : element[..30])}>; only paths are read, so turn shapes and text into paths in your drawing program.");
        }
    }

    private static void CheckAttributes(XmlReader reader, StringBuilder data)
    {
        while (reader.MoveToNextAttribute())
        {
            var (name, value) = (reader.LocalName, reader.Value);
            if (name.StartsWith("on", StringComparison.OrdinalIgnoreCase))
            {
                throw new RefusalException($"The SVG file has a script in {name}; save it as plain paths.");
            }

            if (name == "href" || (name is "style" or "fill" or "stroke" or "clip-path" or "mask" or "filter" && value.Contains("url(", StringComparison.OrdinalIgnoreCase)))
            {
                throw new RefusalException($"The SVG file refers to something else in {name}; save it as plain paths.");
            }

            if (name == "transform")
            {
                throw new RefusalException("The SVG file moves or turns its paths by transform; apply the transformations in your drawing program and save it again.");
            }

            if (name == "d" && reader.NamespaceURI.Length == 0)
            {
                // A relative move that begins a path is from the origin (SVG 1.1, 8.3.2), not from where the path before it ended.
                data.Append(data.Length > 0 && value.AsSpan().TrimStart().StartsWith("m") ? "M0 0 " : "").Append(value).Append(' ');
            }
        }

        reader.MoveToElement();
    }
}
