using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal.Kit;

namespace Foramen.Field.Bench.Masks;

/// <summary>A mask as it is typed in: texts until they are read, a message beside each that cannot be.</summary>
public sealed class MaskForm(UnitSystem units)
{
    /// <summary>What kind of shape: <c>text</c>, <c>ellipse</c> or <c>path</c>.</summary>
    public string Shape { get; set; } = "text";

    /// <summary>The words.</summary>
    public string Text { get; set; } = "";

    /// <summary>The path data.</summary>
    public string Path { get; set; } = "";

    /// <summary>Width on the print.</summary>
    public string Width { get; set; } = Lengths.Bare(40, units);

    /// <summary>Height of an ellipse on the print.</summary>
    public string Height { get; set; } = Lengths.Bare(30, units);

    /// <summary>To the right of the print's middle.</summary>
    public string Right { get; set; } = "0";

    /// <summary>Above the print's middle.</summary>
    public string Up { get; set; } = "0";

    /// <summary>Whether it lies outside, before the hole; in a tray before the paper otherwise.</summary>
    public bool BeforeHole { get; set; }

    /// <summary>From the paper to the tray.</summary>
    public string Tray { get; set; } = Lengths.Bare(5, units);

    /// <summary>From the hole outwards.</summary>
    public string Outside { get; set; } = Lengths.Bare(60, units);

    /// <summary>Whether light passes inside the shape instead of being held back there.</summary>
    public bool Window { get; set; }

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>Takes the paths out of an SVG file; what is wrong with it stands beside the path, which stays as it was.</summary>
    public void TakeSvg(ReadOnlyMemory<byte> file)
    {
        try
        {
            Path = SvgPathFile.PathData(file);
            FileMessage = null;
        }
        catch (RefusalException e)
        {
            FileMessage = e.Message;
        }
    }

    /// <summary>What is wrong with the SVG file last chosen.</summary>
    public string? FileMessage { get; private set; }

    /// <summary>The mask; null where something is wrong, and then <see cref="Messages"/> says what.</summary>
    public MaskDefinition? Read()
    {
        Messages.Clear();
        var width = Length(nameof(Width), Width, 0.5, 2000, "the mask's width");
        var height = Shape == "ellipse" ? Length(nameof(Height), Height, 0.5, 2000, "the ellipse's height") : width;
        var definition = new MaskDefinition
        {
            Name = Shape == "text" && Text.Trim().Length > 0 ? Text.Trim() : Words.Masks.NameOf(Shape),
            Shape = Shape,
            Text = Shape == "text" ? Text : null,
            Path = Shape == "path" ? Path : null,
            HeightOverWidth = Shape == "ellipse" ? height / width : null,
            WidthMillimetres = width,
            XMillimetres = Signed(nameof(Right), Right, "the way to the right"),
            YMillimetres = Signed(nameof(Up), Up, "the way up"),
            Sense = Window ? "passes" : "blocks",
            Place = BeforeHole ? "beforeHole" : "tray",
            DistanceMillimetres = BeforeHole
                ? Length(nameof(Outside), Outside, 0.5, 2000, "the distance from the hole to the mask")
                : Length(nameof(Tray), Tray, 0, 2000, "the distance from tray to paper"),
        };
        if (Messages.Count > 0)
        {
            return null;
        }

        try
        {
            definition.ToMask();
            return definition;
        }
        catch (RefusalException e)
        {
            Messages[Shape == "path" ? nameof(Path) : Shape == "text" ? nameof(Text) : nameof(Height)] = e.Message;
            return null;
        }
    }

    private double Length(string field, string text, double min, double max, string what)
        => Messages.Try(field, () => Lengths.Read(text, min, max, what, units));

    private double Signed(string field, string text, string what) => Length(field, text, -2000, 2000, what);
}
