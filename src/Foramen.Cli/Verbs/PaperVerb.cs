using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Kit;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Cli.Verbs;

/// <summary><c>foramen paper</c>: describes a box of paper, or makes a file for a new one.</summary>
internal static class PaperVerb
{
    private static readonly double[] Times = [1, 30, 120, 600];
    private static readonly double[] FlashFractions = [0, 0.25, 0.5, 0.8, 1];

    public static Command Create(Page page)
    {
        var file = new Argument<string?>("file") { Description = "A paper file. Leave it out to describe a paper by the options.", Arity = ArgumentArity.ZeroOrOne };
        var name = new Option<string?>("--name") { Description = "What you call the box." };
        var kind = new Option<string?>("--kind") { Description = "negative (more light, darker) or directPositive (more light, lighter)." };
        var isoSpeed = new Option<double?>("--iso-speed") { Description = "ISO paper speed P from the box (lamp light, about a second; negative paper only). It is converted for daylight and minutes." };
        var index = new Option<double?>("--ei") { Description = "Exposure index that worked, as set on a meter." };
        var at = new Option<string?>("--ei-at") { Description = "The exposure time it worked at, such as 120s. Required with --ei.", HelpName = "TIME" };
        var light = new Option<string?>("--ei-light") { Description = "The light it worked in; noon where nothing is said.", HelpName = "COLOUR" };
        var range = new Option<double?>("--iso-range") { Description = "ISO range R; 110 (negative) or 90 (direct-positive) where nothing is said." };
        var dMin = new Option<double?>("--dmin") { Description = "Density of the lightest tone; 0.08 where nothing is said." };
        var dMax = new Option<double?>("--dmax") { Description = "Density of the darkest tone; 1.98 where nothing is said." };
        var exponent = new Option<double?>("--failure-p") { Description = "Schwarzschild's p; 0.90 is assumed where nothing is said." };
        var sensitivity = new Option<string?>("--sensitivity") { Description = "blue or variableContrast; blue where nothing is said." };
        var save = new Option<string?>("--save") { Description = "Write the paper to this file.", HelpName = "FILE" };
        var json = CommonOptions.Json();
        var verb = new Command(
            "paper",
            """
            Describes a box of paper: exposure index by light and time, range, what flash gains; or makes a file for a new one.

            Try:
              foramen paper demo/kit/positive.json
              foramen paper --name "my box" --kind directPositive --ei 3 --ei-at 120s --save my-box.json
              foramen paper --name "grade 2" --kind negative --iso-speed 250 --iso-range 110
            """)
        {
            file, name, kind, isoSpeed, index, at, light, range, dMin, dMax, exponent, sensitivity, save, json,
        };
        verb.SetAction(parsed =>
        {
            var path = parsed.GetValue(file);
            var definition = path is not null
                ? KitFile.Paper(path)
                : new PaperDefinition
                {
                    Name = parsed.GetValue(name) ?? "paper",
                    Kind = parsed.GetValue(kind) ?? throw new RefusalException("Say what kind of paper it is: --kind negative or --kind directPositive, or name a paper file."),
                    DMin = parsed.GetValue(dMin),
                    DMax = parsed.GetValue(dMax),
                    IsoRange = parsed.GetValue(range),
                    Sensitivity = parsed.GetValue(sensitivity),
                    Failure = parsed.GetValue(exponent) is { } p ? new FailureDefinition { Law = "schwarzschild", Exponent = p } : null,
                    Speed = new SpeedDefinition
                    {
                        IsoSpeed = parsed.GetValue(isoSpeed),
                        ExposureIndex = parsed.GetValue(index),
                        AtSeconds = parsed.GetValue(at) is { } time ? QuantityText.Duration(time, "the time the exposure index was found at").Seconds : null,
                        LightKelvin = parsed.GetValue(light) is { } colour ? LightColour.Find(colour).Temperature.Kelvin : null,
                    },
                };
            var paper = path is not null ? CommonOptions.PaperOf(path) : definition.ToPaper();
            var report = Report(paper);
            if (parsed.GetValue(save) is { } target)
            {
                KitFile.Save(target, definition, KitJson.Default.PaperDefinition, page);
            }

            return page.Show(parsed.GetValue(json), report, ReportJson.Default.PaperReport, () => Write(page, report, paper));
        });
        return verb;
    }

    private static PaperReport Report(PhotographicPaper paper)
    {
        var measures = IsoPaperMeasures.Of(paper.Curve);
        var midTone = paper.Kind == PaperKind.NegativeWorking
            ? paper.Curve.MinimumDensity.Value + IsoPaperMeasures.SpeedPointNetDensity
            : ExposureIndex.PositiveMidToneDensity;
        var atMidTone = paper.Curve.ExposureFor(Density.FromValue(midTone)).LuxSeconds;
        return new PaperReport
        {
            Name = paper.Name,
            Kind = paper.Kind == PaperKind.NegativeWorking ? "negative" : "directPositive",
            DMin = paper.Curve.MinimumDensity.Value,
            DMax = paper.Curve.MaximumDensity.Value,
            IsoSpeed = measures.Speed,
            IsoRange = measures.Range,
            RangeStops = measures.RangeInStops.Value,
            Failure = paper.Failure.Describe(),
            SpeedSdStops = paper.SpeedSpread.Value,
            ExposureIndices =
            [
                .. from light in LightColour.Known
                   from seconds in Times
                   let efficiency = paper.Failure.MeteredSecondsFor(seconds) / seconds
                   let index = Math.PI / 4 * MeterConstants.Usual.Reflected * Actinic.Factor(light.ToSpectrum(), paper.Sensitivity) * efficiency / atMidTone
                   select new PaperIndexReport(light.Name, seconds, index),
            ],
            Flash =
            [
                .. FlashFractions.Select(fraction =>
                {
                    var effect = FlashEffect.Of(paper.Curve, fraction);
                    return new PaperFlashReport(
                        fraction, effect.VisibleGain.Value, FlashEffect.TexturedRange(paper.Curve, fraction).Value, effect.BaseDensity.Value);
                }),
            ],
        };
    }

    private static void Write(Page page, PaperReport report, PhotographicPaper paper)
    {
        var culture = CultureInfo.CurrentCulture;
        page.Line(string.Create(culture, $"{report.Name}: {(paper.Kind == PaperKind.NegativeWorking ? "negative-working" : "direct-positive")}, density {report.DMin:0.00} to {report.DMax:0.00}, range {report.RangeStops:0.0} stops (R {report.IsoRange:0})"));
        if (report.IsoSpeed is { } speed)
        {
            page.Line(string.Create(culture, $"ISO paper speed {IsoPaperMeasures.RoundSpeed(speed):0} (lamp light, a second)"));
        }

        page.Line(string.Create(culture, $"Speed known to ±{report.SpeedSdStops:0.00} stops (1 sd). Failure: {report.Failure}"));
        page.Line();
        page.Line("Exposure index to set on a meter, by light and exposure time");
        page.Table(
            ["", .. Times.Select(seconds => string.Create(culture, $"{seconds:0} s"))],
            report.ExposureIndices.GroupBy(index => index.Light)
                .Select(group => (IReadOnlyList<string>)[group.Key, .. group.Select(index => index.ExposureIndex.ToString("0.0", culture))]));
        page.Line();
        page.Line("What a flash gains, by what can be seen (flash as a part of the first visible tone)");
        page.Table(
            ["flash", "fainter tones seen", "textured range", "density of flash alone"],
            report.Flash.Select(flash => (IReadOnlyList<string>)
            [
                string.Create(culture, $"{flash.Fraction * 100:0} %"),
                string.Create(culture, $"{flash.VisibleGainStops:+0.0;-0.0;0.0} stops"),
                string.Create(culture, $"{flash.TexturedRangeStops:0.0} stops"),
                flash.BaseDensity.ToString("0.00", culture),
            ]));
        page.Line(paper.Sensitivity.Assumption);
    }
}
