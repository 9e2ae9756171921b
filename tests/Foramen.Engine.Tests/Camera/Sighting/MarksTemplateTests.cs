using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Camera;

public sealed class MarksTemplateTests
{
    private static readonly Gen<(SightingMarks Marks, MarkFace Face)> AnyMarks = Gen.Select(Gen.Double[40, 150], Gen.Double[40, 120], Gen.Double[40, 120], Gen.Double[-15, 15], Gen.Double[-15, 15], Gen.Bool)
        .Select((focal, width, height, x, y, top) => (SightingMarks.For(Flat(0.3, focal, width, height, 0, x, y)), top ? MarkFace.Top : MarkFace.RightSide));

    private static List<TemplateLine> Lines(Template template, double width) => [.. template.Parts.OfType<TemplateLine>().Where(line => line.Width == width)];

    // By similar triangles from the sheet itself: a line of sight runs as far aside, over the base, as its place on the sheet lies from the foot of the hole, over the focal distance.
    // On the side, seen with that side on top after a quarter turn to the left, what was up lies to the left.
    [Fact]
    public void The_lines_of_sight_are_drawn_at_true_scale() => AnyMarks.Sample(of =>
    {
        var (marks, face) = of;
        var camera = marks.Camera;
        var (size, foot) = face == MarkFace.Top ? (camera.Sheet.Width.Millimetres, camera.HoleOffset.XMillimetres) : (camera.Sheet.Height.Millimetres, camera.HoleOffset.YMillimetres);
        var template = MarksTemplate.Of(marks, face);
        var sights = Lines(template, 0.15);
        Assert.Equal(3, sights.Count);
        for (var i = 0; i < 3; i++)
        {
            var (front, rear) = (sights[i].Places[0], sights[i].Places[1]);
            Assert.Equal(sights[0].Places[0], front);
            Assert.Equal(marks.Base.Millimetres, rear.Y - front.Y, 1e-9);
            var place = ((i - 1) * size / 2) - foot;
            Assert.Equal((face == MarkFace.Top ? -1 : 1) * place * marks.Base.Millimetres / camera.FocalDistance.Millimetres, rear.X - front.X, 1e-6);
        }
    });

    // Four places to prick through, each in the middle of a cross of 6 mm, and all of it in the middle of the page.
    [Fact]
    public void Each_place_to_prick_through_has_a_cross() => AnyMarks.Sample(of =>
    {
        var template = MarksTemplate.Of(of.Marks, of.Face);
        var sights = Lines(template, 0.15);
        var strokes = Lines(template, 0.25);
        foreach (var place in sights.Select(line => line.Places[1]).Append(sights[0].Places[0]))
        {
            Assert.Contains(strokes, stroke => Near(stroke.Places[0], (place.X - 3, place.Y)) && Near(stroke.Places[1], (place.X + 3, place.Y)));
            Assert.Contains(strokes, stroke => Near(stroke.Places[0], (place.X, place.Y - 3)) && Near(stroke.Places[1], (place.X, place.Y + 3)));
        }

        Assert.Equal(8, strokes.Count);
        var across = sights.SelectMany(line => line.Places).Select(place => place.X).ToList();
        Assert.Equal(210, across.Min() + across.Max(), 1e-9);

        static bool Near((double X, double Y) one, (double X, double Y) other) => double.Hypot(one.X - other.X, one.Y - other.Y) < 1e-9;
    });

    [Theory]
    [InlineData(MarkFace.Top, "Sighting marks, top: box", "straight above the hole", "left edge,middle,right edge")]
    [InlineData(MarkFace.RightSide, "Sighting marks, right side: box", "level with the hole", "lower edge,middle,upper edge")]
    public void Each_face_has_its_own_words(MarkFace face, string title, string front, string names)
    {
        var template = MarksTemplate.Of(SightingMarks.For(BoxA), face);
        Assert.Equal(title, template.Title);
        var texts = template.Parts.OfType<TemplateText>().ToList();
        Assert.Contains(texts, text => text.Text.Contains(front, StringComparison.Ordinal));
        Assert.Contains(texts, text => text.Text == "Never look at the sun along the marks.");
        var labels = texts.Where(text => names.Split(',').Contains(text.Text)).ToList();
        Assert.Equal(names.Split(','), labels.Select(label => label.Text));

        // Each stands below its own rear mark; the middle one lower, so that they do not run into each other on a narrow sheet.
        var rears = Lines(template, 0.15).Select(line => line.Places[1]).ToList();
        Assert.All(labels.Zip(rears), pair => Assert.True(pair.First.Y - pair.Second.Y is > 4 and < 14 && pair.First.X < pair.Second.X));
        Assert.True(labels[1].Y > labels[0].Y + 3 && labels[0].Y == labels[2].Y);
        Assert.Equal(face == MarkFace.Top, texts.Any(text => text.Text.StartsWith("Lay on the top", StringComparison.Ordinal)));
    }

    // The room is 225 mm high: above the front mark 12 mm and below the rear ones 10 mm, so a base of 203 mm is the longest. The room is 186 mm wide with crosses of 6 mm: 180 mm.
    [Theory]
    [InlineData(60, 203, true)]
    [InlineData(60, 203.1, false)]
    [InlineData(180, 100, true)]
    [InlineData(180.1, 100, false)]
    public void The_longest_base_that_fits_a_page(double width, double distance, bool fits)
    {
        Template Draw() => MarksTemplate.Of(SightingMarks.For(Flat(0.3, distance, width, 60), Mm(distance)), MarkFace.Top);
        if (fits)
        {
            Assert.Equal(3, Lines(Draw(), 0.15).Count);
        }
        else
        {
            Assert.Throws<RefusalException>(Draw);
        }
    }

    // A strip far to one side of its hole: the front mark is beside all rear marks, and has its room as well.
    [Fact]
    public void The_front_mark_has_room_beside_the_rear_ones()
    {
        foreach (var shift in new[] { -90.0, 90 })
        {
            var template = MarksTemplate.Of(SightingMarks.For(Flat(0.3, 100, 90, 60, 0, shift)), MarkFace.Top);
            var across = Lines(template, 0.15).SelectMany(line => line.Places).Select(place => place.X).ToList();
            Assert.Equal(135, across.Max() - across.Min(), 1e-9);
            Assert.Equal(210, across.Max() + across.Min(), 1e-9);
        }
    }

    // By hand: a base of 80 mm, sheet 120 × 90 mm at 60 mm: two pointings of half a millimetre are √½ mm over 80, and on paper √½·60/80 mm of 90.
    [Fact]
    public void The_tolerance_of_the_height()
        => Assert.Equal(Math.Sqrt(0.5) * 60 / 80 / 90, SightingMarks.For(Flat(0.3, 60, 120, 90), Mm(80)).HeightShare, 1e-9);

    // 5.7 is the tangent of 80°: a half sheet of 57 mm at 10 mm.
    [Theory]
    [InlineData(113.9, 20, true)]
    [InlineData(114.1, 20, false)]
    [InlineData(20, 114.1, false)]
    public void Eighty_degrees_aside_is_the_limit(double width, double height, bool marked)
    {
        SightingMarks Mark() => SightingMarks.For(Flat(0.1, 10, width, height), Mm(20));
        if (marked)
        {
            Assert.Equal(80, Mark().Lines[2].Direction.Degrees, 0.1);
        }
        else
        {
            Assert.Throws<RefusalException>(Mark);
        }
    }
}
