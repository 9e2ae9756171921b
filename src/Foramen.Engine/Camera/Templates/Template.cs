using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>A page to be printed at true scale and cut or pricked through: A4 upright, with a bar of 100 mm to check the printer by. Immutable.</summary>
public sealed record Template
{
    /// <summary>Width of the page, mm.</summary>
    public const double WidthMillimetres = 210;

    /// <summary>Height of the page, mm.</summary>
    public const double HeightMillimetres = 297;

    /// <summary>What printers leave white on every side, mm (common practice, no source).</summary>
    public const double MarginMillimetres = 12;

    /// <summary>Length of the bar, mm.</summary>
    public const double BarMillimetres = 100;

    /// <summary>Room for what is drawn, below the heading and above the bar, mm.</summary>
    public const double RoomHeightMillimetres = HeightMillimetres - RoomTop - 30;

    /// <summary>Room for what is drawn, from side to side, mm.</summary>
    public const double RoomWidthMillimetres = WidthMillimetres - (2 * MarginMillimetres);

    /// <summary>Where that room begins, mm from the top.</summary>
    public const double RoomTop = 42;

    private const double BarTop = HeightMillimetres - 22;

    private Template(string title, IReadOnlyList<TemplatePart> parts) => (Title, Parts) = (title, parts);

    /// <summary>What it is.</summary>
    public string Title { get; }

    /// <summary>All that is drawn, in order.</summary>
    public IReadOnlyList<TemplatePart> Parts { get; }

    /// <summary>A page with its heading, its bar and what is drawn on it.</summary>
    /// <param name="title">What it is, in a line.</param>
    /// <param name="lines">What to do with it, a sentence a line.</param>
    /// <param name="parts">What is drawn.</param>
    /// <param name="width">Width of what is drawn, for the check that it fits.</param>
    /// <param name="height">Its height.</param>
    /// <exception cref="RefusalException">It does not fit on the page.</exception>
    public static Template Create(string title, IReadOnlyList<string> lines, IEnumerable<TemplatePart> parts, Length width, Length height)
    {
        if (width.Millimetres > RoomWidthMillimetres || height.Millimetres > RoomHeightMillimetres)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"The template is {width.Millimetres:0} × {height.Millimetres:0} mm; a page holds {RoomWidthMillimetres:0} × {RoomHeightMillimetres:0} mm at true scale, so make it smaller."));
        }

        var all = new List<TemplatePart> { new TemplateText(MarginMillimetres, 18, title, 14, true) };
        all.AddRange(lines.Select((line, i) => new TemplateText(MarginMillimetres, 25 + (4.6 * i), line, 9)));
        all.AddRange(parts);
        const double Right = MarginMillimetres + BarMillimetres;
        all.Add(new TemplateFill([[(MarginMillimetres, BarTop), (Right, BarTop), (Right, BarTop + 2), (MarginMillimetres, BarTop + 2)]], 0));
        all.Add(new TemplateText(MarginMillimetres, BarTop + 7, "This bar is 100 mm long. Print at 100 %, without fitting to the page, and measure it before you cut.", 8));
        return new Template(title, all);
    }
}
