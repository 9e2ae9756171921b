using System.Text;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Journal.Tests.TestKit;

namespace Foramen.Engine.Tests.Print;

public sealed class MaskOutlineTests
{
    private static string Refused(Action work) => Assert.Throws<RefusalException>(work).Message;

    [Fact]
    public void Every_letter_of_the_alphabet_is_open()
    {
        // A stencil: nothing may be enclosed, or it falls out when the letter is cut. Filled from a corner, all that is no stroke is reached.
        foreach (var letter in "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.,-+/':!?&")
        {
            var enclosed = Enclosed(MaskOutline.Text(letter.ToString()));
            Assert.True(enclosed == 0, $"{letter} encloses {enclosed} cells.");
        }
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("   ", "empty")]
    [InlineData("日本", "has no “日”")]
    [InlineData("é", "has no")]
    public void Text_without_glyphs_is_refused(string text, string says) => Assert.Contains(says, Refused(() => MaskOutline.Text(text)), StringComparison.Ordinal);

    [Fact]
    public void Too_long_a_text_is_refused() => Assert.Contains("fit at most", Refused(() => MaskOutline.Text(new string('A', 41))), StringComparison.Ordinal);

    // Shoelace areas worked by hand: a square of 10; a square with a hole wound the other way; a circle of radius 5 by two arcs; a triangle by relative lines.
    [Theory]
    [InlineData("M0 0H10V10H0Z", 100, 10, 10)]
    [InlineData("M0,0 10,0 10,10 0,10z M2,2 l0,6 6,0 0,-6z", 64, 10, 10)]
    [InlineData("M5 0A5 5 0 0 1 5 10A5 5 0 0 1 5 0Z", 78.54, 10, 10)]
    [InlineData("m1e1-0l.5e1 0 0 5z", 12.5, 5, 5)]
    [InlineData("M0 0C0 0 10 0 10 0S10 10 10 10 0 10 0 10Z", 100, 10, 10)]
    [InlineData("M0 0Q5 0 10 0T20 0L20 10 0 10Z", 200, 20, 10)]
    public void Path_data_encloses_its_area(string data, double area, double width, double height)
    {
        var outline = MaskOutline.SvgPath(data);
        Assert.Equal(width / height, outline.Width / outline.Height, 0.01);
        var unit = 2 / Math.Max(width, height);
        Assert.Equal(area * unit * unit, Math.Abs(outline.Rings.Sum(Shoelace)), area * unit * unit * 0.005);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("L 0 0 10 10", "begin with M")]
    [InlineData("M 0 0 L 10", "lacks a number")]
    [InlineData("M 0 0 L NaN 0", "lacks a number")]
    [InlineData("M 0 0 L 1e9 0 0 5Z", "lacks a number")]
    [InlineData("M 0 0 A 5 5 0 2 0 1 1", "flags")]
    [InlineData("M 0 0 L 10 0 L 5 0 Z", "encloses nothing")]
    [InlineData("M 0 0 <script>", "command should be")]
    public void Bad_path_data_is_refused(string data, string says) => Assert.Contains(says, Refused(() => MaskOutline.SvgPath(data)), StringComparison.Ordinal);

    [Fact]
    public void Oversize_path_data_is_refused()
    {
        Assert.Contains("characters", Refused(() => MaskOutline.SvgPath("M0 0" + new string(' ', 300_000))), StringComparison.Ordinal);
        Assert.Contains("segments", Refused(() => MaskOutline.SvgPath("M0 0" + string.Concat(Enumerable.Repeat("l1 1", 25_000)))), StringComparison.Ordinal);
    }

    [Fact]
    public void The_paths_of_a_file_are_taken()
        => Assert.Equal("M0 0H10V10Z ", SvgPathFile.PathData("<svg xmlns=\"http://www.w3.org/2000/svg\"><title>t</title><g><path d=\"M0 0H10V10Z\"/></g></svg>"u8.ToArray()));

    [Theory]
    [InlineData("<svg><script>alert(1)</script></svg>", "script")]
    [InlineData("<svg onload=\"x()\"><path d=\"M0 0\"/></svg>", "script")]
    [InlineData("<svg><image href=\"http://example.org/a.png\"/></svg>", "<image>")]
    [InlineData("<svg xmlns:xlink=\"http://www.w3.org/1999/xlink\"><path xlink:href=\"#a\" d=\"M0 0\"/></svg>", "refers to something else")]
    [InlineData("<svg><path fill=\"url(#g)\" d=\"M0 0\"/></svg>", "refers to something else")]
    [InlineData("<svg><use/></svg>", "<use>")]
    [InlineData("<svg><path transform=\"scale(2)\" d=\"M0 0\"/></svg>", "transform")]
    [InlineData("<!DOCTYPE svg [<!ENTITY a \"b\">]><svg/>", "DOCTYPE")]
    [InlineData("<?xml-stylesheet href=\"http://example.org/a.css\"?><svg/>", "processing instruction")]
    [InlineData("<svg><text>hello</text></svg>", "<text>")]
    [InlineData("<svg><path d=\"M0 0\"", "well-formed")]
    [InlineData("<svg/>", "no path")]
    [InlineData("not XML", "well-formed")]
    public void Files_that_could_run_fetch_or_mislead_are_refused(string file, string says)
        => Assert.Contains(says, Refused(() => SvgPathFile.PathData(Encoding.UTF8.GetBytes(file))), StringComparison.Ordinal);

    [Fact]
    public void Oversize_files_are_refused() => Assert.Contains("kB", Refused(() => SvgPathFile.PathData(new byte[2_000_000])), StringComparison.Ordinal);

    // A stroke of 0.8 with round ends is a bar and a disc: 0.8 · length + 0.16 π. Letters stand 5.6 apart on a grid of 4 × 6.
    [Theory]
    [InlineData("-", 4.8, 0.8, 4)]
    [InlineData("i", 0.8, 6.8, 6)]
    [InlineData("/", 4.8, 6.8, 7.2111)]
    [InlineData(" I I ", 12, 6.8, 12)]
    [InlineData("II-", 14.0, 6.8, 16)]
    [InlineData(".", 0.8, 0.8, 0)]
    [InlineData("L", 4.8, 6.8, 10)]
    public void Letters_are_bars_with_round_ends(string text, double width, double height, double length)
    {
        var outline = MaskOutline.Text(text);
        var unit = 2 / Math.Max(width, height);
        Assert.Equal(width * unit, outline.Width, 0.005);
        Assert.Equal(height * unit, outline.Height, 0.005);
        var area = (0.8 * length) + (outline.Rings.Count * Math.PI * 0.16);
        Assert.Equal(area, outline.Rings.Sum(Shoelace) / (unit * unit), 0.02 * outline.Rings.Count);
    }

    [Fact]
    public void Forty_letters_fit() => Assert.Equal(40, MaskOutline.Text(new string('-', 40)).Rings.Count);

    // Whatever its own units and place, about its middle and two units wide or high.
    [Theory]
    [InlineData("M100 200h30v10h-30z", 2, 0.6667)]
    [InlineData("M-7 -1v-4h-1v4z", 0.5, 2)]
    public void An_outline_lies_about_its_middle_and_is_two_units_large(string data, double width, double height)
    {
        var outline = MaskOutline.SvgPath(data);
        Assert.Equal((width, height), (Math.Round(outline.Width, 4), Math.Round(outline.Height, 4)));
        var places = outline.Rings.SelectMany(ring => ring).ToList();
        Assert.Equal(width / 2, places.Max(place => place.X), 1e-4);
        Assert.Equal(-width / 2, places.Min(place => place.X), 1e-4);
        Assert.Equal(height / 2, places.Max(place => place.Y), 1e-4);
        Assert.Equal(-height / 2, places.Min(place => place.Y), 1e-4);
    }

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.5)]
    [InlineData(50)]
    public void An_ellipse_has_the_shape_and_the_area_of_one(double ratio)
    {
        var outline = MaskOutline.Ellipse(ratio);
        Assert.Equal(ratio, outline.Height / outline.Width, 1e-9);
        Assert.Equal(Math.PI * outline.Width * outline.Height / 4, Shoelace(Assert.Single(outline.Rings)), 0.001 * outline.Width * outline.Height);
    }

    [Fact]
    public void What_is_too_thin_or_too_rich_is_refused()
    {
        Assert.Throws<RefusalException>(() => MaskOutline.Ellipse(0.019));
        Assert.Throws<RefusalException>(() => MaskOutline.Ellipse(51));
        Assert.Contains("encloses nothing", Refused(() => MaskOutline.SvgPath("M0 0H2000V1H0Z")), StringComparison.Ordinal);
        Assert.Contains("encloses nothing", Refused(() => MaskOutline.SvgPath("M0 0V2000H1V0Z")), StringComparison.Ordinal);
        Assert.Contains("places", Refused(() => MaskOutline.SvgPath("M0 0L5 5")), StringComparison.Ordinal);
        var curves = string.Concat(Enumerable.Repeat("C1 5 9 3 2 8", 2500));
        Assert.Contains("40001 places", Refused(() => MaskOutline.SvgPath("M0 0" + curves)), StringComparison.Ordinal);
        Assert.Equal(39_987, MaskOutline.SvgPath("M0 0" + string.Concat(Enumerable.Repeat("C1 5 9 3 2 8", 2499)) + "L1 1L2 3").Rings[0].Count);
    }

    private static double Shoelace(IReadOnlyList<(double X, double Y)> ring)
    {
        var sum = 0.0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (from, to) = (ring[i], ring[(i + 1) % ring.Count]);
            sum += ((from.X * to.Y) - (to.X * from.Y)) / 2;
        }

        return sum;
    }

    private static bool Holds(MaskOutline outline, double x, double y)
    {
        var winding = 0;
        foreach (var ring in outline.Rings)
        {
            for (var i = 0; i < ring.Count; i++)
            {
                var (from, to) = (ring[i], ring[(i + 1) % ring.Count]);
                if (from.Y <= y != to.Y <= y && from.X + ((y - from.Y) / (to.Y - from.Y) * (to.X - from.X)) > x)
                {
                    winding += from.Y <= y ? 1 : -1;
                }
            }
        }

        return winding != 0;
    }

    private static int Enclosed(MaskOutline outline)
    {
        const int Cells = 120;
        var free = new bool[Cells, Cells];
        for (var i = 0; i < Cells * Cells; i++)
        {
            free[i % Cells, i / Cells] = !Holds(outline, ((i % Cells) + 0.5 - (Cells / 2)) / (Cells / 2) * 1.1, ((i / Cells) + 0.5 - (Cells / 2)) / (Cells / 2) * 1.1);
        }

        var stack = new Stack<(int X, int Y)>([(0, 0)]);
        free[0, 0] = false;
        while (stack.TryPop(out var cell))
        {
            foreach (var (x, y) in new[] { (cell.X + 1, cell.Y), (cell.X - 1, cell.Y), (cell.X, cell.Y + 1), (cell.X, cell.Y - 1) })
            {
                if (x is >= 0 and < Cells && y is >= 0 and < Cells && free[x, y])
                {
                    free[x, y] = false;
                    stack.Push((x, y));
                }
            }
        }

        return free.Cast<bool>().Count(one => one);
    }

    [Fact]
    public void Damaged_drawings_end_in_outlines_or_a_refusal_within_bounds()
        => Mutations.Survives(
            [
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><title>t</title><g><path d=\"M0 0H10V10Z\"/></g></svg>"u8.ToArray(),
                "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M10 10C20 20 40 20 50 10S80 0 90 10Q95 20 99 5T120 8A25 26 -30 0 1 50-25Zm5,5h3v4l-1-2z\"/></svg>"u8.ToArray(),
            ],
            file => SvgPathData.Rings(SvgPathFile.PathData(file)), 128_000_000, 4_000);
}
