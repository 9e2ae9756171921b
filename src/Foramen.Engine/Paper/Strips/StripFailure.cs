using Foramen.Engine.Light;

namespace Foramen.Engine.Paper;

/// <summary>The failure's part of a fit.</summary>
internal static class StripFailure
{
    public static FailureEstimate Of(StripPosterior posterior, IReadOnlyList<Strip> strips, PaperSensitivity sensitivity)
    {
        var lights = strips.Select(strip => StripRows.LgLight(strip, sensitivity)).ToList();
        var several = (lights.Max() - lights.Min()) / Math.Log10(2) >= FailureEstimate.LeastLightDifference;
        var sd = Math.Sqrt(posterior.Covariance[StripParameters.Failure, StripParameters.Failure]);
        var found = several && sd <= FailureEstimate.FoundSpread;
        var assumed = posterior.Prior.Failure;
        return new FailureEstimate(
            found ? Corrected(assumed, posterior.Free[StripParameters.Failure]) : assumed, found ? sd : posterior.Prior.FailureSpread, found, several);
    }

    private static FailureLaw Corrected(FailureLaw assumed, double correction) => assumed is SchwarzschildFailure schwarzschild
        ? SchwarzschildFailure.FromExponent(Math.Clamp(schwarzschild.Exponent + correction, 0.5, 1))
        : AdjustedFailure.Of(assumed, Math.Clamp(correction, -0.3, 0.3));
}
