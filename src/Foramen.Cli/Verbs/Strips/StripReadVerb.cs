using System.CommandLine;
using Foramen.Cli.Kit;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Cli.Strips;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;

namespace Foramen.Cli.Verbs.Strips;

/// <summary><c>foramen strip read</c>: writes down a strip that was made and read, as a file for <c>strip fit</c>.</summary>
internal static class StripReadVerb
{
    public static Command Create(Page page)
    {
        var lux = new Option<string?>("--lux") { Description = "Light on the strip as a meter counts it, such as 0.05lx.", HelpName = "LUX" };
        var meter = new Option<string?>("--meter") { Description = "Reading of the white surface the camera looked at, such as \"EV 13\"; with --camera.", HelpName = "READING" };
        var camera = new Option<string?>("--camera") { Description = "Camera file; with --meter.", HelpName = "FILE" };
        var light = CommonOptions.Light();
        var lightSd = new Option<double?>("--light-sd") { Description = "How well that light is known, 1 sd in stops; 0.25 where nothing is said.", HelpName = "STOPS" };
        var times = new Option<string>("--times") { Description = "All the light of each patch, least first: \"8s 16s 32s\".", HelpName = "LIST", Required = true };
        var openings = new Option<bool>("--several-openings") { Description = "The light was interrupted for every move of the card." };
        var densities = new Option<string?>("--densities") { Description = "Density of each patch in that order; - for one not read.", HelpName = "LIST" };
        var scan = new Option<string?>("--scan") { Description = "Or: a scan of the strip, least exposed patch on the left; with --corners, --known and --paper-kind. Of a colour scan the luma is read: 0.30 R + 0.59 G + 0.11 B of its codes.", HelpName = "FILE" };
        var corners = new Option<string?>("--corners") { Description = "Its corner marks in pixels: top left, top right, bottom right, bottom left, such as \"40,60 600,30 610,270 30,240\".", HelpName = "PLACES" };
        var known = new Option<string?>("--known") { Description = "Areas of known density, in parts of width and height between the marks: \"0,0,1,0.2=0.07; 0.9,0.3,1,0.9=2.0\".", HelpName = "AREAS" };
        var edge = new Option<double>("--white-edge") { Description = "Part of the height along the top that is paper white; corrects uneven light.", HelpName = "PART" };
        var kind = new Option<string>("--paper-kind") { Description = "For a scan: negative or directPositive; negative where nothing is said.", HelpName = "KIND", DefaultValueFactory = _ => "negative" };
        var by = new Option<string>("--by") { Description = "eye, densitometer or scan: says how well a density is known; eye where nothing is said.", HelpName = "HOW", DefaultValueFactory = _ => "eye" };
        var sd = new Option<double?>("--density-sd") { Description = "How well a density is known (1 sd), where that is known better.", HelpName = "D" };
        var masked = new Option<double?>("--masked") { Description = "Density of a patch that saw no light.", HelpName = "D" };
        var fogged = new Option<double?>("--fogged") { Description = "Density of a patch that saw far more light than the last.", HelpName = "D" };
        var first = new Option<int?>("--first-tone") { Description = "By eye: the first patch that differs from unexposed paper, from 1.", HelpName = "N" };
        var last = new Option<int?>("--last-tone") { Description = "By eye: the last patch that can be told from the next.", HelpName = "N" };
        var match = new Option<string?>("--match") { Description = "By eye: patch and density of the grey that it matches, such as 5=0.75.", HelpName = "N=D" };
        var save = new Option<string>("--save") { Description = "Write the strip to this file.", HelpName = "FILE", Required = true };
        var verb = new Command(
            "read",
            """
            Writes a strip that was made and read into a file for strip fit. Densities typed, or readings by eye, or both. Read it dry.

            Try:
              foramen strip read --lux 0.05lx --times "8s 16s 32s 64s 128s" --densities "1.93 1.83 1.52 0.92 0.39" --by densitometer --save strip.json
              foramen strip read --meter "EV 13" --camera demo/kit/box-a.json --times "8s 16s 32s 64s 128s" --first-tone 2 --last-tone 4 --match 3=0.75 --save strip.json
              foramen strip read --meter "EV 13" --camera demo/kit/box-a.json --times "8s 16s 32s 64s 128s 256s 512s 1024s" --paper-kind directPositive --scan demo/scans/strip.jpg --corners "110,60 580,72 576,222 106,210" --known "0.2,0,1,0.14=0.09; -0.13,0.3,-0.04,0.9=1.90" --white-edge 0.143 --save strip.json
            """)
        {
            lux, meter, camera, light, lightSd, times, openings, densities, scan, corners, known, edge, kind, by, sd, masked, fogged, first, last, match, save,
        };
        verb.SetAction(parsed =>
        {
            var seconds = StripInput.Times(parsed.GetRequiredValue(times));
            var scanned = parsed.GetValue(scan) is { } picture
                ? StripScanInput.Read(picture, parsed.GetValue(corners), parsed.GetValue(known), seconds.Count, KindOf(parsed.GetRequiredValue(kind)), parsed.GetValue(edge))
                : null;
            var strip = new StripDescription
            {
                OnStripLux = StripInput.Light(parsed.GetValue(lux), parsed.GetValue(meter), parsed.GetValue(camera), "the light on the strip").Lux,
                LightKelvin = CommonOptions.LightOf(parsed.GetValue(light)).Temperature.Kelvin,
                LightSdStops = parsed.GetValue(lightSd),
                Seconds = seconds,
                InSeveralOpenings = parsed.GetValue(openings) ? true : null,
                By = scanned is null ? ReaderOf(parsed.GetRequiredValue(by)) : StripReader.Scan,
                Densities = scanned ?? (parsed.GetValue(densities) is { } list ? StripInput.Densities(list) : null),
                DensitySd = parsed.GetValue(sd),
                MaskedDensity = parsed.GetValue(masked),
                FoggedDensity = parsed.GetValue(fogged),
                FirstTone = parsed.GetValue(first),
                LastTone = parsed.GetValue(last),
                Match = parsed.GetValue(match) is { } said ? MatchOf(said) : null,
            };
            strip.ToStrip().Check();
            if (strip is { Densities: null, FirstTone: null, LastTone: null, Match: null })
            {
                throw new RefusalException("Nothing was read; give --densities, or --first-tone, --last-tone and --match.");
            }

            KitFile.Save(parsed.GetRequiredValue(save), strip, StripJson.Default.StripDescription);
            page.Line($"Strip of {strip.Seconds.Count} patches written to {parsed.GetRequiredValue(save)}. Next: foramen strip fit {parsed.GetRequiredValue(save)} --paper FILE");
            return 0;
        });
        return verb;
    }

    private static StripReader ReaderOf(string text) => text switch
    {
        "eye" => StripReader.Eye,
        "densitometer" => StripReader.Densitometer,
        "scan" => StripReader.Scan,
        _ => throw new RefusalException($"Densities were read by “{text}”; it should be eye, densitometer or scan."),
    };

    private static PaperKind KindOf(string text) => text switch
    {
        "negative" => PaperKind.NegativeWorking,
        "directPositive" => PaperKind.DirectPositive,
        _ => throw new RefusalException($"The paper's kind is “{text}”; it should be negative or directPositive."),
    };

    private static StripMatch MatchOf(string text) => text.Split('=') is [var step, var density] && int.TryParse(step, out var number)
        ? new StripMatch { Step = number, Density = QuantityText.Number(density, "the density that was matched") }
        : throw new RefusalException($"The match is “{text}”; write the patch and the grey's density, such as 5=0.75.");
}
