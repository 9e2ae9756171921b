using System.Globalization;
using System.Text;

namespace Foramen.Engine.Camera;

/// <summary>A template as SVG 1.1 at true scale: width and height in mm, one user unit a millimetre, attributes only (no styles, no scripts, nothing from elsewhere).</summary>
public static class TemplateSvg
{
    private const double MillimetresPerPoint = 25.4 / 72;

    /// <summary>The SVG, from its root element on.</summary>
    public static string Of(Template template)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{Template.WidthMillimetres}mm\" height=\"{Template.HeightMillimetres}mm\" viewBox=\"0 0 {Template.WidthMillimetres} {Template.HeightMillimetres}\">\n");
        text.Append("<title>").Append(Escaped(template.Title)).Append("</title>\n");
        foreach (var part in template.Parts)
        {
            switch (part)
            {
                case TemplateLine line:
                    text.Append(CultureInfo.InvariantCulture, $"<path d=\"{Path(line.Places, false)}\" fill=\"none\" stroke=\"{Grey(line.Grey)}\" stroke-width=\"{line.Width:0.###}\" stroke-linecap=\"round\" stroke-linejoin=\"round\"/>\n");
                    break;
                case TemplateFill fill:
                    text.Append(CultureInfo.InvariantCulture, $"<path d=\"{string.Concat(fill.Rings.Select(ring => Path(ring, true)))}\" fill=\"{Grey(fill.Grey)}\"/>\n");
                    break;
                case TemplateText words:
                    text.Append(CultureInfo.InvariantCulture, $"<text x=\"{words.X:0.###}\" y=\"{words.Y:0.###}\" font-family=\"Helvetica, Arial, sans-serif\" font-size=\"{words.Points * MillimetresPerPoint:0.###}\"{(words.IsBold ? " font-weight=\"bold\"" : "")}>");
                    text.Append(Escaped(words.Text)).Append("</text>\n");
                    break;
            }
        }

        return text.Append("</svg>\n").ToString();
    }

    private static string Path(IReadOnlyList<(double X, double Y)> places, bool closed)
    {
        var text = new StringBuilder();
        for (var i = 0; i < places.Count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"{(i == 0 ? 'M' : 'L')}{places[i].X:0.###} {places[i].Y:0.###}");
        }

        return text.Append(closed ? "Z" : "").ToString();
    }

    private static string Grey(double grey)
    {
        var code = (int)Math.Round(255 * Math.Clamp(grey, 0, 1));
        return $"#{code:x2}{code:x2}{code:x2}";
    }

    private static string Escaped(string text)
        => text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
}
