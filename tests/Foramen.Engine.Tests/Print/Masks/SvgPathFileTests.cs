using System.Text;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print;

public sealed class SvgPathFileTests
{
    // SVG 1.1, 8.3.2: a relative move that begins a path's data is from the origin, whatever path came before it.
    [Fact]
    public void Each_path_begins_where_it_says_and_not_where_the_last_one_ended()
    {
        var rings = SvgPathData.Rings(PathData("<svg><path d=\"M100 100h5v5z\"/><path d=\" m20 30h5v5z m1 1 h5v5z\"/><g><path d=\"m7 8 2 0 0 2\"/></g></svg>"));
        Assert.Equal([(100, 100), (20, 30), (21, 31), (7, 8)], rings.Select(ring => ring[0]));
        Assert.Equal([(7, 8), (9, 8), (9, 10)], rings[3]);
    }

    [Theory]
    [InlineData("<svg><!-- note --><metadata><x:a xmlns:x=\"http://example.org/x\" onload=\"f\">text</x:a></metadata><path d=\"M0 0\"/></svg>")]
    [InlineData("<svg>text<defs/><path d=\"M0 0\"/></svg>")]
    [InlineData("<svg><desc>d</desc><path style=\"fill:red\" fill=\"none\" stroke=\"black\" d=\"M0 0\"/></svg>")]
    [InlineData("<svg xmlns:x=\"http://example.org/x\"><path x:d=\"M9 9\" d=\"M0 0\" id=\"one\"/></svg>")]
    public void What_does_no_harm_is_passed_over(string file) => Assert.Equal("M0 0 ", PathData(file));

    [Theory]
    [InlineData("style", "fill:URL(#a)")]
    [InlineData("stroke", "url(#a)")]
    [InlineData("clip-path", "url(#a)")]
    [InlineData("mask", "url(#a)")]
    [InlineData("filter", "url(#a)")]
    [InlineData("href", "#a")]
    public void A_reference_is_refused_wherever_it_stands(string name, string value)
        => Assert.Contains("refers to something else in " + name, Refused($"<svg><g {name}=\"{value}\"><path d=\"M0 0\"/></g></svg>"), StringComparison.Ordinal);

    [Theory]
    [InlineData("<svg><defs><path d=\"M0 0\"/></defs></svg>", "<defs>")]
    [InlineData("<svg><path d=\"M0 0\"/><abcdefghijklmnopqrstuvwxyzabcdefghij/></svg>", "<abcdefghijklmnopqrstuvwxyzabcd>")]
    [InlineData("<svg><path OnClick=\"x\" d=\"M0 0\"/></svg>", "script in OnClick")]
    [InlineData("<svg>\n<path d=\"M0 0\"/>\n</g>", "line 3")]
    public void What_is_refused_is_named(string file, string says) => Assert.Contains(says, Refused(file), StringComparison.Ordinal);

    [Fact]
    public void A_million_bytes_are_read_and_no_more()
    {
        const string File = "<svg><path d=\"M0 0\"/></svg>";
        Assert.Equal("M0 0 ", PathData(File.PadRight(1_000_000)));
        Assert.Contains("1000 kB", Refused(File.PadRight(1_000_001)), StringComparison.Ordinal);
    }

    private static string PathData(string file) => SvgPathFile.PathData(Encoding.UTF8.GetBytes(file));

    private static string Refused(string file) => Assert.Throws<RefusalException>(() => PathData(file)).Message;
}
