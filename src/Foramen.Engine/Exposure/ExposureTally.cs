using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>
/// The tally of an exposure under changing light: progress u = ∫ dt/T(I), done at 1, where T(I) is the full time needed at constant light I by
/// the paper's failure law. For Schwarzschild's law this equals (∫ I^(1/p) dt)^p of one latent-image state; for any law it is linear
/// accumulation. Dark gaps cost nothing. Light that flickers faster than about a second should be averaged before it is entered. Immutable.
/// </summary>
/// <remarks>
/// Limits: real emulsions care a little about order (bright first works better, up to a few tenths of a stop; Webb, JOSA 40, 3, 1950) and lose a
/// little to interruption. The model does not.
/// </remarks>
public sealed record ExposureTally
{
    private readonly double meteredSeconds;

    private ExposureTally(FailureLaw failure, Duration planned)
    {
        Failure = failure;
        Planned = planned;
        meteredSeconds = failure.MeteredSecondsFor(planned.Seconds);
    }

    /// <summary>The paper's failure law.</summary>
    public FailureLaw Failure { get; }

    /// <summary>The planned time at the metered light, failure included.</summary>
    public Duration Planned { get; }

    /// <summary>A tally for a planned exposure.</summary>
    /// <param name="failure">The paper's failure law.</param>
    /// <param name="planned">The planned time at the metered light, failure included; 0.01 s to a day.</param>
    /// <exception cref="RefusalException">A time outside the range.</exception>
    public static ExposureTally For(FailureLaw failure, Duration planned)
    {
        Guard.Within(planned.Seconds, 0.01, 86_400, "the planned exposure", "s");
        return new ExposureTally(failure, planned);
    }

    /// <summary>T(I): the full time needed if the light were constant.</summary>
    /// <param name="light">Light against the metered light, −20 to +20 stops.</param>
    public Duration FullTimeAt(Stops light)
    {
        Guard.Within(light.Value, -20, 20, "the change of light", "stops");
        return Duration.FromSeconds(Math.Min(Duration.Max, Failure.SecondsNeeded(meteredSeconds / light.Ratio)));
    }

    /// <summary>Progress u after these spans: 0 at the start, 1 when done, more when over.</summary>
    public double Progress(IEnumerable<LightSpan> spans)
    {
        var progress = 0.0;
        foreach (var span in spans)
        {
            progress += span.Covered ? 0 : span.Time.Seconds / FullTimeAt(span.Light).Seconds;
        }

        return progress;
    }

    /// <summary>The time left if the light stays as it is now; zero when done.</summary>
    /// <param name="progress">u so far, zero or more.</param>
    /// <param name="lightNow">Light now against the metered light.</param>
    public Duration Remaining(double progress, Stops lightNow)
    {
        Guard.Within(progress, 0, 1e6, "the progress");
        return Duration.FromSeconds(Math.Max(0, 1 - progress) * FullTimeAt(lightNow).Seconds);
    }

    /// <summary>
    /// How far the sheet is over (positive) or under the plan in effective exposure: the metered worth of u·T against that of T, at the metered light.
    /// </summary>
    /// <param name="progress">u, above zero.</param>
    public Stops OverOrUnder(double progress)
    {
        Guard.Within(progress, 1e-6, 1e6, "the progress");
        return Stops.FromRatio(Failure.MeteredSecondsFor(progress * Planned.Seconds) / meteredSeconds);
    }
}
