using System.CommandLine;
using Foramen.Cli.Kit;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Cli.Scans;

/// <summary>The options that describe a mask.</summary>
internal sealed class MaskOptions
{
    private const int LargestSvg = 1_000_000;

    public Argument<string?> File { get; } = new("file") { Description = "A mask file. Leave it out to describe a mask by the options.", Arity = ArgumentArity.ZeroOrOne };

    public Option<string?> Text { get; } = new("--text") { Description = "Words in the stencil alphabet: A to Z, 0 to 9 and . , - + / ' : ! ? &.", HelpName = "TEXT" };

    public Option<string?> Ellipse { get; } = new("--ellipse") { Description = "An ellipse of this width and height on the print, such as 80x60mm.", HelpName = "SIZE" };

    public Option<string?> Path { get; } = new("--path") { Description = "The data of an SVG path, such as \"M 0 0 L 10 0 L 5 8 Z\".", HelpName = "PATH" };

    public Option<string?> Svg { get; } = new("--svg") { Description = "An SVG file with nothing but paths: a silhouette.", HelpName = "FILE" };

    public Option<string?> Width { get; } = new("--width") { Description = "Width on the finished print, such as 40mm.", HelpName = "LENGTH" };

    public Option<string?> Right { get; } = new("--right") { Description = "How far right of the print's middle its own middle is; --left for the other way.", HelpName = "LENGTH" };

    public Option<string?> Left { get; } = new("--left") { Description = "How far left of the print's middle.", HelpName = "LENGTH" };

    public Option<string?> Up { get; } = new("--up") { Description = "How far above the print's middle; --down for the other way.", HelpName = "LENGTH" };

    public Option<string?> Down { get; } = new("--down") { Description = "How far below the print's middle.", HelpName = "LENGTH" };

    public Option<string?> Turn { get; } = new("--turn") { Description = "How far it is turned to the left, such as 10deg.", HelpName = "ANGLE" };

    public Option<bool> Window { get; } = new("--window") { Description = "The shape lets light through and what is around it holds it back; otherwise the shape holds it back." };

    public Option<string?> Tray { get; } = new("--tray") { Description = "It lies in a tray so far before the paper, such as 10mm.", HelpName = "LENGTH" };

    public Option<string?> BeforeHole { get; } = new("--before-hole") { Description = "It is fixed outside so far before the hole, such as 20mm.", HelpName = "LENGTH" };

    public void AddTo(Command verb)
    {
        verb.Arguments.Add(File);
        foreach (var option in new Option[] { Text, Ellipse, Path, Svg, Width, Right, Left, Up, Down, Turn, Window, Tray, BeforeHole })
        {
            verb.Options.Add(option);
        }
    }

    /// <summary>The mask: from its file, or from the options.</summary>
    /// <exception cref="RefusalException">No shape or several, no size, no place or two.</exception>
    public MaskDefinition Read(ParseResult parsed)
    {
        if (parsed.GetValue(File) is { } file)
        {
            return KitFile.Mask(file);
        }

        var (shape, text, path, ellipse) = Shape(parsed);
        var (tray, before) = (parsed.GetValue(Tray), parsed.GetValue(BeforeHole));
        if (tray is null == before is null)
        {
            throw new RefusalException("Say where the mask lies: in a tray before the paper (--tray 10mm) or outside before the hole (--before-hole 20mm).");
        }

        return new MaskDefinition
        {
            Name = text ?? shape,
            Shape = shape,
            Text = text,
            Path = path,
            HeightOverWidth = ellipse is { } size ? size.Height.Metres / size.Width.Metres : null,
            WidthMillimetres = ellipse is { } sized ? sized.Width.Millimetres : Length(parsed, Width, "the mask's width on the print")
                ?? throw new RefusalException("Say how wide the mask should be on the print, such as --width 40mm."),
            XMillimetres = Length(parsed, Right, "the way to the right") ?? -Length(parsed, Left, "the way to the left"),
            YMillimetres = Length(parsed, Up, "the way up") ?? -Length(parsed, Down, "the way down"),
            TurnDegrees = parsed.GetValue(Turn) is { } turn ? QuantityText.Angle(turn, "the mask's turn").Degrees : null,
            Sense = parsed.GetValue(Window) ? "passes" : "blocks",
            Place = tray is null ? "beforeHole" : "tray",
            DistanceMillimetres = QuantityText.Length(tray ?? before!, "the mask's distance").Millimetres,
        };
    }

    private static double? Length(ParseResult parsed, Option<string?> option, string what)
        => parsed.GetValue(option) is { } text ? QuantityText.Length(text, what).Millimetres : null;

    private (string Shape, string? Text, string? Path, (Length Width, Length Height)? Ellipse) Shape(ParseResult parsed)
    {
        var (text, ellipse, path, svg) = (parsed.GetValue(Text), parsed.GetValue(Ellipse), parsed.GetValue(Path), parsed.GetValue(Svg));
        return (text, ellipse, path, svg) switch
        {
            ({ } words, null, null, null) => ("text", words, null, null),
            (null, { } size, null, null) => ("ellipse", null, null, EllipseSize(size)),
            (null, null, { } data, null) => ("path", null, data, null),
            (null, null, null, { } file) => ("path", null, SvgPathFile.PathData(Bytes(file)), null),
            (null, null, null, null) => throw new RefusalException("Say what the mask shows: --text, --ellipse, --path or --svg; or name a mask file."),
            _ => throw new RefusalException("The mask has several shapes; give one of --text, --ellipse, --path and --svg."),
        };
    }

    private static (Length Width, Length Height) EllipseSize(string text)
    {
        var size = QuantityText.Size(text, "the ellipse's size");
        return size.Width.Metres > 0 ? size : throw new RefusalException($"The ellipse's size is \"{text}\"; it needs a width, such as 80x60mm.");
    }

    private static byte[] Bytes(string path)
    {
        var file = new FileInfo(path);
        if (!file.Exists)
        {
            throw new RefusalException($"There is no file {path}; name an SVG file that exists.");
        }

        return file.Length <= LargestSvg
            ? System.IO.File.ReadAllBytes(path)
            : throw new RefusalException($"{path} has {file.Length / 1000} kB; SVG files up to {LargestSvg / 1000} kB are read, so simplify its paths.");
    }
}
