using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>The camera's exposure index out of a fit: EI(t) = (π/4)·K·A·(t_m(t)/t)/H_mid at the time t that gave the mid-tone (see <see cref="ExposureIndex"/>).</summary>
internal static class StripIndex
{
    private static readonly ExposureIndex AnyIndex = ExposureIndex.Found(1, Duration.FromSeconds(1), LightColour.Lamp, MeterConstants.Usual);

    /// <summary>The index by the first strip of a fit.</summary>
    public static IndexEstimate Of(StripPosterior posterior, Strip strip, PaperSensitivity sensitivity, double quantile)
    {
        var time = TimeOfMidTone(posterior, strip, sensitivity);
        var actinic = Actinic.Factor(strip.Light.ToSpectrum(), sensitivity);
        var (x, load) = StripRows.At(0, time.Seconds, posterior.Prior.Failure);
        var constant = Math.Log10(Math.PI / 4 * MeterConstants.Usual.Reflected * actinic / time.Seconds) + x;
        var (lg, sd) = posterior.Propagate(free => constant + (free[StripParameters.Failure] * load) - LgMidTone(posterior.ShapeAt(free)));
        return new IndexEstimate(StripFit.AroundLg(lg, sd, quantile), time, strip.Light, Stops.FromValue(sd / Math.Log10(2)));
    }

    /// <summary>lg of the effective exposure of a metered mid-tone.</summary>
    public static double LgMidTone(CurveShape shape) => shape.LgExposureAt(MidToneShare(shape));

    private static double MidToneShare(CurveShape shape)
        => (AnyIndex.MidToneDensity(shape.Kind, Density.FromValue(shape.Min), Density.FromValue(shape.Min + shape.Net)).Value - shape.Min) / shape.Net;

    private static Duration TimeOfMidTone(StripPosterior posterior, Strip strip, PaperSensitivity sensitivity)
    {
        var lgLight = StripRows.LgLight(strip, sensitivity) + posterior.Free[StripParameters.FirstLight];
        var wanted = LgMidTone(posterior.Shape);
        var (low, high) = (-3.0, Math.Log10(86_400));
        for (var i = 0; i < 50; i++)
        {
            var middle = (low + high) / 2;
            var (x, load) = StripRows.At(lgLight, Math.Pow(10, middle), posterior.Prior.Failure);
            (low, high) = x + (posterior.Free[StripParameters.Failure] * load) < wanted ? (middle, high) : (low, middle);
        }

        return Duration.FromSeconds(Math.Clamp(Math.Pow(10, low), 0.001, 86_400));
    }
}
