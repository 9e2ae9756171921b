using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>The template of a face's sighting marks: prick the four places through onto the box.</summary>
public static class MarksTemplate
{
    private const double Cross = 3;
    private const double Below = 10;

    /// <summary>The template of one face.</summary>
    /// <exception cref="RefusalException">It does not fit on a page: choose a shorter base.</exception>
    public static Template Of(SightingMarks marks, MarkFace face)
    {
        // On the page the scene is at the top and the right of the page is the right of the box. The side is drawn as it is seen when the camera is turned a quarter to the
        // left and that side lies on top: what was up is then to the left.
        var flip = face == MarkFace.Top ? 1 : -1;
        var lines = marks.Lines.Where(line => line.Face == face).ToList();
        var (least, most) = (lines.Min(line => flip * line.RearAcrossMillimetres), lines.Max(line => flip * line.RearAcrossMillimetres));
        (least, most) = (Math.Min(least, 0) - Cross, Math.Max(most, 0) + Cross);
        var front = (X: (Template.WidthMillimetres / 2) - ((least + most) / 2), Y: Template.RoomTop + 12);
        var rear = front.Y + marks.Base.Millimetres;
        var parts = new List<TemplatePart>();
        parts.AddRange(CrossAt(front.X, front.Y));
        parts.Add(new TemplateText(front.X + 5, front.Y - 4, face == MarkFace.Top ? "front mark: straight above the hole" : "front mark: level with the hole", 8));
        foreach (var line in lines)
        {
            var x = front.X + (flip * line.RearAcrossMillimetres);
            parts.Add(new TemplateLine([(front.X, front.Y), (x, rear)], 0.15, 0.55));
            parts.AddRange(CrossAt(x, rear));
            parts.Add(new TemplateText(Math.Min(x - 6, Template.WidthMillimetres - Template.MarginMillimetres - 18), rear + (line.Name == "middle" ? 12 : 7), line.Name, 8));
        }

        var title = FormattableString.Invariant($"Sighting marks, {(face == MarkFace.Top ? "top" : "right side")}: {marks.Camera.Name}");
        return Template.Create(
            title,
            [
                face == MarkFace.Top
                    ? "Lay on the top of the box, this edge of the page towards the subject; prick the crosses through."
                    : "Turn the camera a quarter to the left, so that its right side lies on top; lay on, this edge towards the subject.",
                "Look from a rear mark over the front mark: the line shows where that edge of the picture runs, or its middle.",
                SightingMarks.Caution,
            ],
            parts,
            Length.FromMillimetres(most - least),
            Length.FromMillimetres(marks.Base.Millimetres + 12 + Below));
    }

    private static IEnumerable<TemplatePart> CrossAt(double x, double y) =>
    [
        new TemplateLine([(x - Cross, y), (x + Cross, y)], 0.25),
        new TemplateLine([(x, y - Cross), (x, y + Cross)], 0.25),
    ];
}
