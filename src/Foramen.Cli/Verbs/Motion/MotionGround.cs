using System.CommandLine;
using Foramen.Cli.Options;
using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Cli.Verbs.Motion;

/// <summary>The options that say what something moves before, shared by the verbs under <c>motion</c>.</summary>
internal sealed class MotionGround
{
    private readonly Option<string> camera = new("--camera") { Description = "Camera file.", HelpName = "FILE", Required = true };
    private readonly Option<string> paper = new("--paper") { Description = "Paper file.", HelpName = "FILE", Required = true };
    private readonly Option<string> meter = new("--meter") { Description = "Reading of the background, such as \"EV 12\".", HelpName = "READING", Required = true };
    private readonly Option<string?> time = new("--time") { Description = "How long the hole is open, such as 2min; as long as the background needs to come out mid where nothing is said.", HelpName = "TIME" };
    private readonly Option<string?> light = CommonOptions.Light();
    private readonly Option<double?> k = CommonOptions.MeterConstant();

    public Option<bool> Json { get; } = CommonOptions.Json();

    public Command On(Command verb)
    {
        foreach (var option in new Option[] { camera, paper, meter, time, light, k, Json })
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    /// <summary>The camera, the paper in its light, the background on the sheet, and the exposure.</summary>
    public (PinholeCamera Camera, PaperResponse Response, MotionOnPaper Paper) Read(ParseResult parsed)
    {
        var box = CommonOptions.CameraOf(parsed.GetRequiredValue(camera));
        var response = PaperResponse.Of(CommonOptions.PaperOf(parsed.GetRequiredValue(paper)), CommonOptions.LightOf(parsed.GetValue(light)));
        var background = ReadingText.Luminance(parsed.GetRequiredValue(meter), CommonOptions.MeterOf(parsed.GetValue(k)), "the background");
        var open = parsed.GetValue(time) is { } text
            ? QuantityText.Duration(text, "the exposure time")
            : new FacadeExposure(box, response, Rendering.Mid).TimeFor(background);
        return (box, response, new MotionOnPaper(response, box.ImageIlluminance(background, box.HoleOffset), new SheetExposure(open, default), FlashSetup.None));
    }
}
