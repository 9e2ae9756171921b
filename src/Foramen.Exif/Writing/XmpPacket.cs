using System.Globalization;
using System.Text;
using System.Xml.Linq;

namespace Foramen.Exif;

/// <summary>Facts as an XMP packet (ISO 16684-1), with the Exif properties of CIPA DC-010.</summary>
internal static class XmpPacket
{
    private static readonly XNamespace Meta = "adobe:ns:meta/";
    private static readonly XNamespace Rdf = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private static readonly XNamespace DublinCore = "http://purl.org/dc/elements/1.1/";
    private static readonly XNamespace ExifProperties = "http://ns.adobe.com/exif/1.0/";

    public static byte[] Of(PictureFacts facts)
    {
        var description = new XElement(
            Rdf + "Description",
            new XAttribute(Rdf + "about", ""),
            new XAttribute(XNamespace.Xmlns + "dc", DublinCore),
            new XAttribute(XNamespace.Xmlns + "exif", ExifProperties));
        if (facts.Title is { Length: > 0 } title)
        {
            description.Add(new XElement(
                DublinCore + "title",
                new XElement(Rdf + "Alt", new XElement(Rdf + "li", new XAttribute(XNamespace.Xml + "lang", "x-default"), Plain(title)))));
        }

        Add("ExposureTime", facts.ExposureTime is { } time ? Ratio(time.Seconds, 1000) : null);
        Add("FNumber", facts.FNumber is { } number ? Ratio(number.Value, 100) : null);
        Add("FocalLength", facts.FocalDistance is { } distance ? Ratio(distance.Millimetres, 100) : null);
        Add("DateTimeOriginal", facts.OpenedAt?.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture));
        Add("GPSLatitude", facts.Place is { } north ? Minutes(north.Latitude.Degrees, 'N', 'S') : null);
        Add("GPSLongitude", facts.Place is { } east ? Minutes(east.Longitude.Degrees, 'E', 'W') : null);
        var packet = new XElement(Meta + "xmpmeta", new XAttribute(XNamespace.Xmlns + "x", Meta), new XElement(Rdf + "RDF", new XAttribute(XNamespace.Xmlns + "rdf", Rdf), description));

        // The marks around it are the standard's own, so that the packet can be found in a file of any kind.
        return Encoding.UTF8.GetBytes($"<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n{packet.ToString(SaveOptions.DisableFormatting)}\n<?xpacket end=\"r\"?>");

        void Add(string name, string? value)
        {
            if (value is not null)
            {
                description.Add(new XElement(ExifProperties + name, value));
            }
        }
    }

    private static string Ratio(double value, int under) => FormattableString.Invariant($"{Math.Round(value * under):0}/{under}");

    private static string Minutes(double degrees, char positive, char negative)
    {
        var tenThousandths = (long)Math.Round(Math.Abs(degrees) * 600_000);
        return FormattableString.Invariant($"{tenThousandths / 600_000},{tenThousandths % 600_000 / 10_000.0:0.0000}{(degrees < 0 ? negative : positive)}");
    }

    // What XML cannot hold is left out of a title.
    private static string Plain(string text) => new([.. text.Where(letter => letter >= ' ' && !char.IsSurrogate(letter) && letter < '\uFFFE')]);
}
