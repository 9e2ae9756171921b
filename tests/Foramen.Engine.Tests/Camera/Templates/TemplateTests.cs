using System.Globalization;
using System.Xml.Linq;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public sealed class TemplateTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static Template Page(params TemplatePart[] parts) => Template.Create("A <page> & more", ["First do this.", "Then that."], parts, Mm(10), Mm(10));

    private static XElement Drawn(params TemplatePart[] parts) => XDocument.Parse(TemplateSvg.Of(Page(parts))).Root!;

    // A4 is 210 × 297 mm (ISO 216), and a user unit of the drawing is a millimetre of it.
    [Fact]
    public void The_page_is_A4_at_true_scale()
    {
        var root = Drawn();
        Assert.Equal(("210mm", "297mm", "0 0 210 297"), (root.Attribute("width")!.Value, root.Attribute("height")!.Value, root.Attribute("viewBox")!.Value));
        Assert.Equal("A <page> & more", root.Element(Svg + "title")!.Value);
    }

    [Fact]
    public void The_bar_is_100_mm_long_and_lies_on_the_page()
    {
        var places = Places(Drawn().Elements(Svg + "path").Single());
        Assert.Equal(100, places.Max(place => place.X) - places.Min(place => place.X), 1e-9);
        Assert.Equal(2, places.Max(place => place.Y) - places.Min(place => place.Y), 1e-9);
        Assert.All(places, place => Assert.True(place is { X: >= 12 and <= 198, Y: > 200 and < 285 }));
    }

    // A point of type is 1/72 in: 14 of them are 4.939 mm. The heading is bold, and what to do stands below it, a line under a line.
    [Fact]
    public void The_heading_is_above_its_sentences()
    {
        var texts = Drawn().Elements(Svg + "text").ToList();
        Assert.Equal(["A <page> & more", "First do this.", "Then that."], texts.Take(3).Select(text => text.Value));
        Assert.Equal("bold", texts[0].Attribute("font-weight")!.Value);
        Assert.All(texts.Skip(1), text => Assert.Null(text.Attribute("font-weight")));
        Assert.Equal(14 * 25.4 / 72, Number(texts[0], "font-size"), 5e-4);
        var baselines = texts.Take(3).Select(text => Number(text, "y")).ToList();
        Assert.True(baselines[0] + 3 < baselines[1] && baselines[1] + 3 < baselines[2] && baselines[2] < Template.RoomTop);
        Assert.Contains("100 mm long", texts[^1].Value, StringComparison.Ordinal);
        Assert.True(Number(texts[^1], "y") > 275);
    }

    [Fact]
    public void Lines_and_shapes_are_drawn_where_they_were_put()
    {
        var (line, fill) = (new TemplateLine([(1.5, 2), (30, 40.25), (50, 2)], 0.25, 0.5), new TemplateFill([[(10, 10), (20, 10), (20, 20)], [(12, 12), (14, 12), (14, 14)]], 1));
        var paths = Drawn(line, fill).Elements(Svg + "path").ToList();
        Assert.Equal(3, paths.Count);
        Assert.Equal(line.Places, Places(paths[0]));
        Assert.Equal(("none", "#808080", "0.25"), (paths[0].Attribute("fill")!.Value, paths[0].Attribute("stroke")!.Value, paths[0].Attribute("stroke-width")!.Value));
        Assert.DoesNotContain("Z", paths[0].Attribute("d")!.Value, StringComparison.Ordinal);
        Assert.Equal(fill.Rings.SelectMany(ring => ring), Places(paths[1]));
        Assert.Equal(2, paths[1].Attribute("d")!.Value.Count(letter => letter == 'Z'));
        Assert.Equal("#ffffff", paths[1].Attribute("fill")!.Value);
    }

    // Black is 00, white ff, and each grey between is to the nearest of 256; beyond either end it is that end.
    [Theory]
    [InlineData(-1, "#000000")]
    [InlineData(0, "#000000")]
    [InlineData(0.2, "#333333")]
    [InlineData(0.55, "#8c8c8c")]
    [InlineData(2, "#ffffff")]
    public void Greys_are_codes(double grey, string code)
        => Assert.Equal(code, Drawn(new TemplateLine([(0, 0), (1, 1)], 1, grey)).Elements(Svg + "path").First().Attribute("stroke")!.Value);

    [Fact]
    public void Numbers_keep_their_point_in_any_language()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Contains("M1.5 2L30.125 4", TemplateSvg.Of(Page(new TemplateLine([(1.5, 2), (30.125, 4)], 0.25))), StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // 186 mm is the page less twice its margin; 225 mm is what heading and bar leave.
    [Theory]
    [InlineData(186, 225, true)]
    [InlineData(186.1, 225, false)]
    [InlineData(186, 225.1, false)]
    [InlineData(10, 300, false)]
    public void What_does_not_fit_is_refused_and_never_shrunk(double width, double height, bool fits)
    {
        if (fits)
        {
            Assert.Equal("page", Template.Create("page", [], [], Mm(width), Mm(height)).Title);
        }
        else
        {
            Assert.Contains("a page holds 186 × 225 mm", Assert.Throws<RefusalException>(() => Template.Create("page", [], [], Mm(width), Mm(height))).Message, StringComparison.Ordinal);
        }
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static List<(double X, double Y)> Places(XElement path)
        => [.. path.Attribute("d")!.Value.Split(['M', 'L', 'Z'], StringSplitOptions.RemoveEmptyEntries)
            .Select(pair => pair.Split(' ')).Select(pair => (double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture)))];
}
