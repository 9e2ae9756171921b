using Foramen.Engine.Camera;

namespace Foramen.Exchange.Paper;

/// <summary>Templates as a PDF at true scale, one a page.</summary>
public static class TemplatePdf
{
    /// <summary>Writes the file.</summary>
    /// <param name="into">Where to.</param>
    /// <param name="templates">The pages.</param>
    public static void Write(Stream into, IReadOnlyList<Template> templates)
        => PdfPage.Write(into, templates[0].Title, [.. templates.Select(Page)]);

    private static PdfPage Page(Template template)
    {
        var page = new PdfPage();
        foreach (var part in template.Parts)
        {
            switch (part)
            {
                case TemplateLine line:
                    page.RoundLine(line.Places, line.Width, line.Grey);
                    break;
                case TemplateFill fill:
                    page.FillRings(fill.Rings, fill.Grey);
                    break;
                case TemplateText words:
                    page.Text(words.X, words.Y, words.Text, words.Points, words.IsBold);
                    break;
            }
        }

        return page;
    }
}
