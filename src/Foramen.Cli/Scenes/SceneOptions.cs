using System.CommandLine;
using Foramen.Cli.Options;

namespace Foramen.Cli.Scenes;

/// <summary>The options that describe a scene, shared by <c>expose</c> and <c>preview</c>.</summary>
internal sealed class SceneOptions
{
    public Argument<string> Photograph { get; } = new("photograph") { Description = "A photograph of the subject, taken from where the camera stands (JPEG, PNG or WebP)." };

    public Option<string> Camera { get; } = new("--camera") { Description = "Camera file; make one with foramen camera … --save FILE.", HelpName = "FILE", Required = true };

    public Option<string> Paper { get; } = new("--paper") { Description = "Paper file; make one with foramen paper … --save FILE.", HelpName = "FILE", Required = true };

    public Option<string[]> Tones { get; } = new("--tone")
    {
        Description = "A tone and how it should come out: \"elevator: textured highlight at 45%,30%\", \"wall: mid at 10%,60% to 20%,70%\", \"doorway: open shadow reads EV 9.3\". Renderings: open shadow, mid, textured highlight, may burn, may block. Repeat for more; three are chosen where none is given.",
        HelpName = "TONE",
        AllowMultipleArgumentsPerToken = false,
    };

    public Option<string?> Light { get; } = CommonOptions.Light();

    public Option<string?> Anchor { get; } = new("--anchor")
    {
        Description = "One meter reading that fixes the photograph's luminances, such as \"45%,60% reads EV 12.3\". Needed where the file does not say how it was exposed.",
        HelpName = "READING",
    };

    public Option<string?> FocalLength { get; } = new("--focal-length-35") { Description = "The photograph's focal length in terms of 36 × 24 mm, such as 26mm, where the file does not say it.", HelpName = "LENGTH" };

    public Option<string?> Format { get; } = new("--format") { Description = "level or upright; as the sheet lies in the camera where nothing is said.", HelpName = "FORMAT" };

    public Option<string?> Pan { get; } = new("--pan") { Description = "How far to the right of the photograph's middle the camera points, such as 5deg.", HelpName = "ANGLE" };

    public Option<string?> Tilt { get; } = new("--tilt") { Description = "How far the camera is tilted up, such as 10deg; verticals converge.", HelpName = "ANGLE" };

    public Option<string?> PhotographTilt { get; } = new("--photo-tilt") { Description = "How far the phone was tilted up when it took the photograph.", HelpName = "ANGLE" };

    public Option<string?> FlashAt { get; } = new("--flash-at") { Description = "Reading of the even surface the flash is given at, such as \"EV 14\". A white card in the light of the mid-tone is assumed where nothing is said.", HelpName = "READING" };

    public Option<bool> NoFlash { get; } = new("--no-flash") { Description = "Give no flash." };

    public Option<double?> LightSpread { get; } = new("--light-spread") { Description = "How much the light may drift during the exposure, stops (1 sd): 0.2 in fair weather, 0.5 under broken cloud.", HelpName = "STOPS" };

    public Option<double?> MeterConstant { get; } = CommonOptions.MeterConstant();

    public void AddTo(Command verb)
    {
        verb.Arguments.Add(Photograph);
        foreach (var option in new Option[] { Camera, Paper, Tones, Light, Anchor, FocalLength, Format, Pan, Tilt, PhotographTilt, FlashAt, NoFlash, LightSpread, MeterConstant })
        {
            verb.Options.Add(option);
        }
    }
}
