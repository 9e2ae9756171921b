using System.Globalization;
using System.Text;

namespace Foramen.Exchange.Paper;

/// <summary>
/// An upright A4 page of a PDF 1.4 (ISO 32000-1), drawn in millimetres from the upper left corner, in Helvetica, which every reader brings along: no font
/// file, no native library, so it is also written in a browser. Letters beyond Windows code page 1252 become question marks.
/// </summary>
internal sealed class PdfPage
{
    public const double WidthMillimetres = 210;

    public const double HeightMillimetres = 297;

    private const double PointsPerMillimetre = 72 / 25.4;

    // Helvetica's widths for the letters from space to tilde, in thousandths of its size (Adobe's font metrics, from memory).
    private static readonly int[] Widths =
    [
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584,
    ];

    // Where code page 1252 leaves Latin-1.
    private static readonly Dictionary<char, byte> Windows1252 = new()
    {
        ['€'] = 0x80, ['…'] = 0x85, ['‘'] = 0x91, ['’'] = 0x92, ['“'] = 0x93, ['”'] = 0x94, ['•'] = 0x95, ['–'] = 0x96, ['—'] = 0x97, ['−'] = 0x96,
    };

    private readonly StringBuilder content = new();

    /// <summary>Width of a text, mm.</summary>
    public static double WidthOf(string text, double points)
        => text.Sum(letter => letter is >= ' ' and <= '~' ? Widths[letter - ' '] : 556) * points / 1000 / PointsPerMillimetre;

    /// <summary>Writes a text with its baseline at a place.</summary>
    public void Text(double x, double y, string text, double points, bool bold = false, double grey = 0)
    {
        Put($"{Number(grey)} g BT /{(bold ? "F2" : "F1")} {Number(points)} Tf {Number(x * PointsPerMillimetre)} {Number((HeightMillimetres - y) * PointsPerMillimetre)} Td (");
        foreach (var letter in text)
        {
            Escape(letter);
        }

        Put(") Tj ET\n");
    }

    /// <summary>Writes a text in the width given, over as many lines as it takes; the next baseline is returned.</summary>
    public double Paragraph(double x, double y, double width, string text, double points, double leading)
    {
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && WidthOf($"{line} {word}", points) > width)
            {
                Text(x, y, line.ToString(), points);
                y += leading;
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        Text(x, y, line.ToString(), points);
        return y + leading;
    }

    /// <summary>Fills a rectangle with a grey, 0 black to 1 white.</summary>
    public void Fill(double x, double y, double width, double height, double grey)
        => Put($"{Number(grey)} g {Rectangle(x, y, width, height)} re f\n");

    /// <summary>Draws a line through places.</summary>
    public void Line(IReadOnlyList<(double X, double Y)> places, double width, double grey = 0)
    {
        if (places.Count < 2)
        {
            return;
        }

        Put($"{Number(grey)} G {Number(width * PointsPerMillimetre)} w ");
        for (var i = 0; i < places.Count; i++)
        {
            Put($"{Number(places[i].X * PointsPerMillimetre)} {Number((HeightMillimetres - places[i].Y) * PointsPerMillimetre)} {(i == 0 ? 'm' : 'l')} ");
        }

        Put("S\n");
    }

    /// <summary>Draws a line with round ends and corners.</summary>
    public void RoundLine(IReadOnlyList<(double X, double Y)> places, double width, double grey)
    {
        Put("q 1 J 1 j ");
        Line(places, width, grey);
        Put("Q\n");
    }

    /// <summary>Fills rings with a grey, by the nonzero rule.</summary>
    public void FillRings(IReadOnlyList<IReadOnlyList<(double X, double Y)>> rings, double grey)
    {
        Put($"{Number(grey)} g ");
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Count; i++)
            {
                Put($"{Number(ring[i].X * PointsPerMillimetre)} {Number((HeightMillimetres - ring[i].Y) * PointsPerMillimetre)} {(i == 0 ? 'm' : 'l')} ");
            }

            Put("h ");
        }

        Put("f\n");
    }

    /// <summary>Writes the file.</summary>
    public void Write(Stream into, string title) => Write(into, title, [this]);

    /// <summary>Writes a file of several pages.</summary>
    public static void Write(Stream into, string title, IReadOnlyList<PdfPage> pages)
    {
        // Objects 1 to 5 are the same in every file; each page then takes two, itself and its content.
        const int FirstPage = 6;
        var parts = new List<string>
        {
            "<< /Type /Catalog /Pages 2 0 R /Lang (en) >>",
            $"<< /Type /Pages /Kids [{string.Join(' ', pages.Select((_, i) => $"{FirstPage + (2 * i)} 0 R"))}] /Count {pages.Count} >>",
            "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>",
            "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica-Bold /Encoding /WinAnsiEncoding >>",
            $"<< /Title <{Convert.ToHexString([0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(title)])}> /Producer (Foramen) >>",
        };
        foreach (var page in pages)
        {
            parts.Add($"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595.276 841.89] /Contents {parts.Count + 2} 0 R /Resources << /Font << /F1 3 0 R /F2 4 0 R >> >> >>");
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"<< /Length {page.content.Length} >>\nstream\n{page.content}\nendstream"));
        }

        var file = new StringBuilder("%PDF-1.4\n%\u00E2\u00E3\u00CF\u00D3\n");
        var places = new List<int>();
        for (var i = 0; i < parts.Count; i++)
        {
            places.Add(file.Length);
            file.Append(CultureInfo.InvariantCulture, $"{i + 1} 0 obj\n{parts[i]}\nendobj\n");
        }

        var table = file.Length;
        file.Append(CultureInfo.InvariantCulture, $"xref\n0 {parts.Count + 1}\n0000000000 65535 f \n");
        foreach (var place in places)
        {
            file.Append(CultureInfo.InvariantCulture, $"{place:0000000000} 00000 n \n");
        }

        file.Append(CultureInfo.InvariantCulture, $"trailer\n<< /Size {parts.Count + 1} /Root 1 0 R /Info 5 0 R >>\nstartxref\n{table}\n%%EOF\n");
        into.Write(Encoding.Latin1.GetBytes(file.ToString()));
    }

    private void Escape(char letter)
    {
        if (letter is '(' or ')' or '\\')
        {
            content.Append('\\').Append(letter);
        }
        else if (letter is (>= ' ' and <= '~') or (>= '\u00A0' and <= '\u00FF'))
        {
            content.Append(letter);
        }
        else
        {
            content.Append(Windows1252.TryGetValue(letter, out var code) ? (char)code : char.IsWhiteSpace(letter) ? ' ' : '?');
        }
    }

    private void Put(string text) => content.Append(text);

    private static string Rectangle(double x, double y, double width, double height)
        => $"{Number(x * PointsPerMillimetre)} {Number((HeightMillimetres - y - height) * PointsPerMillimetre)} {Number(width * PointsPerMillimetre)} {Number(height * PointsPerMillimetre)}";

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
