using System.CommandLine;
using System.Globalization;
using Foramen.Cli.Options;
using Foramen.Cli.Output;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Cli.Verbs.Strips;

/// <summary><c>foramen strip failure</c>: the failure exponent out of strips in clearly different light.</summary>
internal static class StripFailureVerb
{
    public static Command Create(Page page)
    {
        var options = new StripFitOptions();
        var json = CommonOptions.Json();
        var verb = new Command(
            "failure",
            """
            Finds the failure exponent from strips of one box in clearly different light (two stops at least). One strip cannot tell failure from
            speed; it is refused, with the second strip to make.

            Try:
              foramen strip failure bright.json dim.json --paper demo/kit/positive.json
            """)
        {
            json,
        };
        options.AddTo(verb);
        verb.SetAction(parsed =>
        {
            var (box, strips) = options.Read(parsed, page);
            var fit = StripFitOptions.Fit(box, strips);
            if (!fit.Failure.HasSeveralLights)
            {
                throw new RefusalException(
                    $"Strips in one light cannot tell failure from speed. {StripAdvice.After(fit, StripGoal.Failure).Describe()}");
            }

            var report = Report(fit.Failure);
            return page.Show(parsed.GetValue(json), report, ReportJson.Default.StripFailureReport, () => Write(page, report, fit));
        });
        return verb;
    }

    public static StripFailureReport Report(FailureEstimate failure)
        => new(failure.IsAssumed, failure.Law.Describe(), failure.Exponent, failure.SpreadPerDoubling);

    private static void Write(Page page, StripFailureReport report, StripFit fit)
    {
        page.Line((report.Assumed ? "Still assumed: " : "Found: ") + report.Law);
        page.Line(string.Create(CultureInfo.CurrentCulture, $"Known to ± {report.SdPerDoubling:0.000} (1 sd), from an assumption of ± {fit.PriorFailureSpread:0.000}."));
        if (report.Assumed)
        {
            page.Line(StripAdvice.After(fit, StripGoal.Failure).Describe());
        }
    }
}
