using System.Globalization;
using Foramen.Engine.Paper;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Strips;

/// <summary>A box's next description, as its strips say it is. What the strips do not say is left as it was.</summary>
public static class FittedPaper
{
    /// <summary>The description.</summary>
    /// <param name="before">The box as described so far.</param>
    /// <param name="fit">Its strips' curve.</param>
    public static PaperDefinition Describe(PaperDefinition before, StripFit fit)
    {
        var range = fit.Range?.Value;
        return before with
        {
            DMin = Round(fit.Curve.MinimumDensity.Value),
            DMax = Round(fit.Curve.MaximumDensity.Value),
            IsoRange = range is { } told ? Math.Round(told, 1) : before.IsoRange,
            Asymmetry = range is null ? before.Asymmetry : Round(fit.Curve.Asymmetry),
            Speed = new SpeedDefinition
            {
                ExposureIndex = Significant(fit.Index.Index.Value),
                AtSeconds = Significant(fit.Index.At.Seconds),
                LightKelvin = Math.Round(fit.Index.Light.Temperature.Kelvin),
                SdStops = Round(fit.Index.Spread.Value),
            },
            Failure = FailureOf(before, fit.Failure),
            Note = string.Create(CultureInfo.InvariantCulture, $"Fitted to {fit.Strips.Count} {(fit.Strips.Count == 1 ? "strip" : "strips")}."),
        };
    }

    // A law other than Schwarzschild's cannot be written down with a correction, so it stays and the strips' doubt is in the speed.
    private static FailureDefinition? FailureOf(PaperDefinition before, FailureEstimate failure) => failure.Exponent is { } exponent
        ? new FailureDefinition { Law = "schwarzschild", Exponent = Round(exponent), ExponentSd = Round(failure.SpreadPerDoubling) }
        : before.Failure;

    private static double Round(double value) => Math.Round(value, 3);

    private static double Significant(double value) => value == 0 ? 0 : Math.Round(value, Math.Clamp(3 - (int)Math.Floor(Math.Log10(value)), 0, 10));
}
