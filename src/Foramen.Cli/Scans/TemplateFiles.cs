using System.Text;
using Foramen.Engine.Camera;
using Foramen.Exchange.Paper;
using Foramen.Imaging;

namespace Foramen.Cli.Scans;

/// <summary>Writes templates, whole or not at all.</summary>
internal static class TemplateFiles
{
    /// <summary>A PDF of all pages.</summary>
    public static void Pdf(string? path, IReadOnlyList<Template> pages, List<string> files)
    {
        if (path is not null)
        {
            WholeFile.Write(path, stream => TemplatePdf.Write(stream, pages));
            files.Add(path);
        }
    }

    /// <summary>An SVG of one page.</summary>
    public static void Svg(string? path, Template page, List<string> files)
    {
        if (path is not null)
        {
            WholeFile.Write(path, stream => stream.Write(Encoding.UTF8.GetBytes(TemplateSvg.Of(page))));
            files.Add(path);
        }
    }
}
