using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>
/// From tones, paper, light and flash: what a time and a flash will do, and which time and flash place the wanted tones best.
/// Image and flash add as effective exposures on the paper's curve. Immutable; every answer is a function of what it was made from.
/// </summary>
/// <remarks>
/// The loss (ADR 0004): for each tone that matters, its distance from the exposure aimed at, in stops, over the distance from there to the edge
/// of its band on that side; squared up to the edge and linear beyond (Huber), summed, plus a small price on flash so that none is
/// given that gains nothing.
/// </remarks>
public sealed class ExposurePlanner
{
    /// <summary>Longest exposure recommended: six hours by the clock.</summary>
    public const double LongestSeconds = 6 * 3600;

    /// <summary>Strongest flash recommended: the first visible tone itself.</summary>
    public const double StrongestFlash = 1.0;

    private const double FlashPrice = 0.08;

    private readonly PaperResponse response;
    private readonly IReadOnlyList<PlacedTone> tones;
    private readonly RenderingBand[] bands;
    private readonly FlashSetup flash;
    private readonly ExposureErrors errors;
    private readonly double flashThreshold;
    private readonly double tolerance;

    /// <summary>A planner for one scene on one paper.</summary>
    /// <param name="response">The paper in the light of the scene.</param>
    /// <param name="tones">The tones, each where it lies on the sheet; at least one must matter.</param>
    /// <param name="flash">How a flash can be given.</param>
    /// <param name="errors">Spreads known before the time is; failure is filled in from the paper at the planned time.</param>
    /// <param name="tolerance">How many times as far from the aim as its band says a tone may lie and the sheet is still kept; 0.25 to 4.</param>
    /// <exception cref="RefusalException">No tones, none that matters, one that gets no light, or a tolerance out of its range.</exception>
    public ExposurePlanner(
        PaperResponse response, IReadOnlyList<PlacedTone> tones, FlashSetup flash, ExposureErrors errors, double tolerance = 1)
    {
        this.tolerance = Guard.Within(tolerance, 0.25, 4, "the tolerance");
        if (tones.Count == 0)
        {
            throw new RefusalException("There are no tones to place; give at least one, such as the mid-tone.");
        }

        this.response = response;
        this.tones = tones;
        this.flash = flash;
        this.errors = errors;
        bands = [.. tones.Select(tone => RenderingBand.On(response.Paper.Curve, tone.Rendering).Stretched(tolerance))];
        if (Array.TrueForAll(bands, band => band.Aim is null))
        {
            throw new RefusalException("Every tone may burn or block, so any exposure would do; say of at least one how it should come out.");
        }

        foreach (var tone in tones)
        {
            if (tone.OnSheet.Lux <= 0 || tone.ActinicRatio <= 0)
            {
                throw new RefusalException($"The tone \"{tone.Name}\" puts no light on the sheet; read it again or leave it out.");
            }
        }

        flashThreshold = FlashEffect.Threshold(response.Paper.Curve).LuxSeconds;
    }

    /// <summary>The time and flash with the least loss, and what they will do.</summary>
    /// <exception cref="RefusalException">Even six hours are not enough.</exception>
    public ExposureForecast Recommend()
    {
        var best = (Loss: double.PositiveInfinity, Metered: 1.0, Fraction: 0.0);
        var steps = flash.IsPossible ? 20 : 0;
        for (var i = 0; i <= steps; i++)
        {
            var fraction = steps == 0 ? 0 : StrongestFlash * i / steps;
            var (loss, metered) = BestTimeFor(fraction);
            if (loss < best.Loss - 1e-9)
            {
                best = (loss, metered, fraction);
            }
        }

        return Forecast(new SheetExposure(Duration.FromSeconds(Reachable(best.Metered)), FlashTimeFor(best.Fraction)));
    }

    /// <summary>
    /// The time and flash with the best odds. Starts from the one with the least loss and moves only where that raises the odds; where no exposure
    /// has any, it is that one.
    /// </summary>
    /// <exception cref="RefusalException">Even six hours are not enough.</exception>
    public SheetExposure Likeliest()
    {
        var start = Recommend().Exposure;
        var (metered, fraction) = Climb(response.Paper.Failure.MeteredSecondsFor(start.Time.Seconds), FlashFractionOf(start.Flash), flashMoves: flash.IsPossible);
        return new SheetExposure(Duration.FromSeconds(response.Paper.Failure.SecondsNeeded(metered)), FlashTimeFor(fraction));
    }

    /// <summary>The time with the best odds for a sheet that already has its flash, as strong as that may be.</summary>
    /// <param name="given">The flash on the sheet, 0 to a day.</param>
    /// <exception cref="RefusalException">Even six hours are not enough, or a flash where none can be given.</exception>
    public SheetExposure LikeliestAfter(Duration given)
    {
        Guard.Within(given.Seconds, 0, 86_400, "the flash", "s");
        var fraction = FlashFractionOf(given);
        var start = BestTimeFor(fraction).Metered;
        _ = Reachable(start);
        var (metered, _) = Climb(start, fraction, flashMoves: false);
        return new SheetExposure(Duration.FromSeconds(response.Paper.Failure.SecondsNeeded(metered)), given);
    }

    /// <summary>The odds alone that this time and flash make a keeper; cheaper than <see cref="Forecast"/>.</summary>
    /// <exception cref="RefusalException">As for <see cref="Forecast"/>.</exception>
    public Probability OddsFor(SheetExposure exposure)
    {
        Guard.Within(exposure.Time.Seconds, 0.01, 86_400, "the exposure time", "s");
        Guard.Within(exposure.Flash.Seconds, 0, 86_400, "the flash", "s");
        var spread = errors with { Failure = response.Paper.FailureSpread(exposure.Time) };
        return Probability.FromFraction(
            OddsAt(response.Paper.Failure.MeteredSecondsFor(exposure.Time.Seconds), FlashFractionOf(exposure.Flash)).Under(spread));
    }

    /// <summary>What this time and flash will do.</summary>
    /// <exception cref="RefusalException">A time outside 0.01 s to a day, or a flash where none can be given.</exception>
    public ExposureForecast Forecast(SheetExposure exposure)
    {
        Guard.Within(exposure.Time.Seconds, 0.01, 86_400, "the exposure time", "s");
        Guard.Within(exposure.Flash.Seconds, 0, 86_400, "the flash", "s");
        var fraction = FlashFractionOf(exposure.Flash);
        var spread = errors with { Failure = response.Paper.FailureSpread(exposure.Time) };
        var odds = OddsAt(response.Paper.Failure.MeteredSecondsFor(exposure.Time.Seconds), fraction);
        var expected = odds.Under(spread);
        var limits = Limits(odds, spread, expected);
        return new ExposureForecast(
            exposure,
            fraction,
            FlashEffect.Of(response.Paper.Curve, Math.Min(fraction, 3)).VisibleGain,
            [.. tones.Select((tone, i) => Tone(tone, bands[i], exposure, fraction, spread))],
            Probability.FromFraction(expected),
            limits[0].Source,
            limits,
            Stops.RootSumSquare(spread.OfPaper, spread.OfImage));
    }

    /// <summary>Where this time and flash put the tones; hundreds of times cheaper than <see cref="Forecast"/>.</summary>
    /// <exception cref="RefusalException">As for <see cref="Forecast"/>.</exception>
    public IReadOnlyList<ToneLanding> Land(SheetExposure exposure)
    {
        Guard.Within(exposure.Time.Seconds, 0.01, 86_400, "the exposure time", "s");
        Guard.Within(exposure.Flash.Seconds, 0, 86_400, "the flash", "s");
        var fraction = FlashFractionOf(exposure.Flash);
        return [.. tones.Select((tone, i) =>
        {
            var (image, flashHere) = ExposuresOf(tone, exposure, fraction);
            return new ToneLanding(tone, FromAim(bands[i], image + flashHere), flashHere > 0 ? flashHere / (image + flashHere) : 0);
        })];
    }

    /// <summary>
    /// Two sheets a chosen way apart, so that the odds of at least one keeper are best: errors of paper, meter, colour, hole and of each tone's reading are the
    /// same on both, those of light, bath and timing are not.
    /// </summary>
    /// <param name="forecast">The single sheet to put a second beside.</param>
    public Bracket BracketAround(ExposureForecast forecast)
    {
        var fraction = forecast.FlashFraction;
        var metered = response.Paper.Failure.MeteredSecondsFor(forecast.Exposure.Time.Seconds);
        var spread = errors with { Failure = response.Paper.FailureSpread(forecast.Exposure.Time) };
        (Bracket? Best, double Odds) best = (null, -1);
        for (var spacing = 0.0; spacing <= 3.01; spacing += 0.25)
        {
            var factor = Math.Pow(2, spacing / 2);
            var (less, more) = (metered / factor, metered * factor);
            var union = OddsOfEither(OddsAt(less, fraction), OddsAt(more, fraction), spread);
            if (union > best.Odds + 1e-6)
            {
                best = (new Bracket(Sheet(less), Sheet(more), Stops.FromValue(spacing), Probability.FromFraction(union)), union);
            }
        }

        return best.Best!;

        SheetExposure Sheet(double meteredSeconds) => new(
            Duration.FromSeconds(response.Paper.Failure.SecondsNeeded(meteredSeconds)), forecast.Exposure.Flash);
    }

    private static double OddsOfEither(KeeperOdds first, KeeperOdds second, ExposureErrors spread)
    {
        const int Points = 200;
        var shared = spread.SharedBySheets;
        var ownPaper = KeeperOdds.Grid(spread.Development.Value, 5);
        var ownImage = KeeperOdds.Grid(Stops.RootSumSquare(spread.Light, spread.Timing).Value, 5);
        var sum = 0.0;
        for (var point = 0; point < Points; point++)
        {
            var paper = shared.OfPaper.Value * NormalSequence.At(point, 0);
            var image = shared.OfImage.Value * NormalSequence.At(point, 1);
            var around = Array.ConvertAll(ownImage, own => (own.Node + image, own.Weight));
            sum += 1 - (Miss(first, point, paper, around) * Miss(second, point, paper, around));
        }

        return sum / Points;

        double Miss(KeeperOdds odds, int point, double paper, (double Node, double Weight)[] image)
        {
            var hit = 0.0;
            foreach (var (own, weight) in ownPaper)
            {
                hit += weight * odds.GivenReadings(paper + own, image, tone => NormalSequence.At(point, 2 + tone));
            }

            return 1 - hit;
        }
    }

    private KeeperOdds OddsAt(double meteredSeconds, double fraction) => new(AimsFor(fraction), meteredSeconds);

    private ToneAim[] AimsFor(double fraction) => ToneAim.For(response, tones, fraction * flashThreshold, flash.ThroughHole, tolerance);

    private static List<LimitShare> Limits(KeeperOdds odds, ExposureErrors spread, double expected)
    {
        // When knowing everything exactly would still not make a keeper, the scene asks too much.
        if (!odds.ArePlaced())
        {
            return [new LimitShare(ErrorSource.SceneRange, Probability.FromFraction(expected), 1)];
        }

        var gains = Enum.GetValues<ErrorSource>()
            .Where(source => source != ErrorSource.SceneRange)
            .Select(source => (Source: source, Odds: source == ErrorSource.ToneReadings
                ? odds.Under(spread, withToneReadings: false)
                : odds.Under(spread.Without(source))))
            .ToList();
        var total = gains.Sum(gain => Math.Max(0, gain.Odds - expected));
        return [.. gains
            .Select(gain => new LimitShare(
                gain.Source, Probability.FromFraction(gain.Odds), total > 0 ? Math.Max(0, gain.Odds - expected) / total : 0))
            .OrderByDescending(limit => limit.Share)
            .ThenBy(limit => limit.Source)];
    }

    private ToneForecast Tone(
        PlacedTone tone, RenderingBand band, SheetExposure exposure, double fraction, ExposureErrors spread)
    {
        var curve = response.Paper.Curve;
        var (image, flashHere) = ExposuresOf(tone, exposure, fraction);
        var density = curve.DensityAt(LuminousExposure.FromLuxSeconds(image + flashHere));
        var outcome = Outcome(density.Value, flashHere, band, image + flashHere);
        var alone = new KeeperOdds(
            ToneAim.For(response, [tone], fraction * flashThreshold, flash.ThroughHole, tolerance),
            response.Paper.Failure.MeteredSecondsFor(exposure.Time.Seconds));
        return new ToneForecast(
            tone,
            density,
            SpreadOfDensity(image, flashHere, spread, ToneAim.SpreadOf(tone)),
            outcome,
            FromAim(band, image + flashHere),
            Probability.FromFraction(band.Aim is null ? 1 : alone.Under(spread)));
    }

    private static Stops? FromAim(RenderingBand band, double total) => band.Aim is { } aim ? Stops.FromRatio(total / aim.LuxSeconds) : null;

    private (double Image, double Flash) ExposuresOf(PlacedTone tone, SheetExposure exposure, double fraction) => (
        response.EffectiveExposure(tone.OnSheet, tone.ActinicRatio, exposure.Time).LuxSeconds,
        fraction * flashThreshold * (flash.ThroughHole ? tone.Falloff : 1));

    private ToneOutcome Outcome(double density, double flashHere, RenderingBand band, double total)
    {
        var curve = response.Paper.Curve;
        const double Visible = IsoPaperMeasures.FirstToneNetDensity;
        var negative = curve.Kind == PaperKind.NegativeWorking;
        var flashed = curve.DensityAt(LuminousExposure.FromLuxSeconds(flashHere)).Value;
        var darkEnd = curve.MinimumDensity.Value + (IsoPaperMeasures.DarkestShareOfNetDensity * curve.NetDensity);

        // The finished picture of a negative is its inversion, so its black end is the negative's pale one.
        var (blocked, burnt) = negative
            ? (density - flashed < Visible, density > darkEnd)
            : (flashed - density < Visible, density - curve.MinimumDensity.Value < Visible);
        if (blocked)
        {
            return ToneOutcome.Blocked;
        }

        if (burnt)
        {
            return ToneOutcome.Burnt;
        }

        if (band.Aim is null)
        {
            return ToneOutcome.AsWanted;
        }

        return total < band.Low.LuxSeconds ? ToneOutcome.TooDark
            : band.High is { } high && total > high.LuxSeconds ? ToneOutcome.TooLight
            : ToneOutcome.AsWanted;
    }

    private double SpreadOfDensity(double image, double flashHere, ExposureErrors spread, double toneSpread)
    {
        var curve = response.Paper.Curve;
        var imageSpread = Stops.RootSumSquare(spread.OfImage, Stops.FromValue(toneSpread)).Value;
        var (mean, square) = (0.0, 0.0);
        foreach (var (paperError, paperWeight) in KeeperOdds.Grid(spread.OfPaper.Value, 11))
        {
            foreach (var (imageError, imageWeight) in KeeperOdds.Grid(imageSpread, 11))
            {
                var total = Math.Pow(2, paperError) * ((image * Math.Pow(2, imageError)) + flashHere);
                var density = curve.DensityAtLg(Math.Log10(total));
                mean += paperWeight * imageWeight * density;
                square += paperWeight * imageWeight * density * density;
            }
        }

        return Math.Sqrt(Math.Max(0, square - (mean * mean)));
    }

    private Duration FlashTimeFor(double fraction)
        => fraction <= 0 ? default : response.TimeFor(LuminousExposure.FromLuxSeconds(fraction * flashThreshold), flash.OnSheet, 1);

    private double FlashFractionOf(Duration time)
    {
        if (time.Seconds <= 0)
        {
            return 0;
        }

        if (!flash.IsPossible)
        {
            throw new RefusalException("A flash time was given but nothing to flash at; meter the surface that the flash is pointed at.");
        }

        return response.EffectiveExposure(flash.OnSheet, 1, time).LuxSeconds / flashThreshold;
    }

    // Seconds by the clock for a metered time, if anyone would wait for them.
    private double Reachable(double metered)
    {
        var seconds = response.Paper.Failure.SecondsNeeded(metered);
        return seconds <= LongestSeconds
            ? seconds
            : throw new RefusalException(FormattableString.Invariant(
                $"This light would need {seconds / 3600:0} hours; beyond {LongestSeconds / 3600:0} hours no paper's behaviour is known, so wait for more light or use a larger hole."));
    }

    // From a place uphill, in steps of time and, where it may still be chosen, of flash.
    private (double Metered, double Fraction) Climb(double fromMetered, double fromFraction, bool flashMoves)
    {
        var best = (Metered: fromMetered, Fraction: fromFraction);
        var odds = OddsOf(best.Metered, best.Fraction);
        for (var step = 0.5; step > 0.05; step /= 2)
        {
            var moved = true;
            for (var i = 0; moved && i < 8; i++)
            {
                moved = false;
                foreach (var (time, more) in new[] { (step, 0.0), (-step, 0.0), (0.0, step / 2), (0.0, -step / 2) })
                {
                    var metered = best.Metered * Math.Pow(2, time);
                    var fraction = more == 0 ? best.Fraction : Math.Clamp(best.Fraction + more, 0, StrongestFlash);
                    if ((more != 0 && (!flashMoves || fraction == best.Fraction)) || response.Paper.Failure.SecondsNeeded(metered) is < 0.01 or > LongestSeconds)
                    {
                        continue;
                    }

                    // A tenth of a percent is not worth a flash, nor a step.
                    var there = OddsOf(metered, fraction);
                    if (there > odds + 0.001)
                    {
                        (best, odds, moved) = ((metered, fraction), there, true);
                    }
                }
            }
        }

        return best;

        double OddsOf(double metered, double fraction) => OddsAt(metered, fraction)
            .Under(errors with { Failure = response.Paper.FailureSpread(Duration.FromSeconds(response.Paper.Failure.SecondsNeeded(metered))) });
    }

    private (double Loss, double Metered) BestTimeFor(double fraction)
    {
        var aims = AimsFor(fraction);
        var price = FlashPrice * fraction * fraction;
        double Loss(double meteredSeconds)
        {
            var loss = price;
            foreach (var aim in aims)
            {
                loss += aim.LossAt(meteredSeconds);
            }

            return loss;
        }

        // Coarse scan, then golden section: the loss has one valley for one tone but may have shoulders for several.
        const double From = -12;
        const double To = 18;
        const double Step = 0.25;
        var (best, at) = (double.PositiveInfinity, From);
        for (var stops = From; stops <= To; stops += Step)
        {
            var loss = Loss(Math.Pow(2, stops));
            if (loss < best)
            {
                (best, at) = (loss, stops);
            }
        }

        var metered = Math.Pow(2, GoldenSection.Summit(stops => -Loss(Math.Pow(2, stops)), at - Step, at + Step, 1e-8));
        return (Loss(metered), metered);
    }
}
