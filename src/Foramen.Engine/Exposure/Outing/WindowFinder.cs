using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>The windows of a place, in a day or through a year.</summary>
public static class WindowFinder
{
    private const int Samples = 8;

    // Down to here the light of dusk may still do for some papers; beyond, no window is looked for.
    private const double DarkestDegrees = -18;

    /// <summary>The windows between two instants, in order.</summary>
    /// <param name="place">The place.</param>
    /// <param name="wish">What must be so.</param>
    /// <param name="exposure">The exposure of the facade by its luminance; may be missing if the wish sets no longest exposure.</param>
    /// <param name="from">Beginning; its offset is given to all windows.</param>
    /// <param name="to">End, up to 400 days later.</param>
    /// <exception cref="RefusalException">Outside 1950 to 2050, the wrong way round, or a longest exposure without a camera and paper.</exception>
    public static IReadOnlyList<PlaceWindow> Find(
        OutingPlace place, WindowWish wish, FacadeExposure? exposure, DateTimeOffset from, DateTimeOffset to)
    {
        if (wish.LongestExposure is not null && exposure is null)
        {
            throw new RefusalException("A longest exposure was asked for without a camera and a paper; name both, or leave the exposure open.");
        }

        var light = exposure is null ? null : new FacadeLightCurve(place.Facade, wish.Cover, place.Ground.Fraction);

        // Over a year the sun's distance changes its light by ±3.4 %; that of the month is near enough.
        var strength = new SunStrength(from, to);
        var least = wish.LongestExposure is { } longest ? exposure!.LeastLuminanceFor(longest).CandelasPerSquareMetre * Math.PI / place.Reflectance.Fraction : 0;
        var leastCosine = Math.Sin(wish.LeastRaking.Radians);
        double Height(SkyPosition sun, double aboveAir)
        {
            // Only the sign counts and that it is smooth; the cheapest questions come first, and the first no is the answer. By night nothing is worth
            // being there for, unless a longest exposure says how dark it may be.
            var height = least > 0 ? double.PositiveInfinity : sun.Elevation.Degrees;
            var clear = double.NaN;
            if (wish.SunOnFacade)
            {
                height = Math.Min(sun.Elevation.Degrees, (place.Facade.CosineTo(sun) - leastCosine) * (180 / Math.PI));
                if (height < 0)
                {
                    return height;
                }

                clear = Clear(place.ShadeOnFacade, sun);
                height = Math.Min(height, clear);
            }

            if (height >= 0 && wish.SunOutOfPicture && place.Aim is { } aim)
            {
                height = Math.Min(height, aim.ClearanceDegrees(sun) - FrameAim.UsualMarginDegrees);
            }

            if (height >= 0 && wish.SunOffHole && place.Aim is { } camera)
            {
                height = Math.Min(height, OffHole(camera, place.ShadeOnHole, sun));
            }

            if (height >= 0 && least > 0)
            {
                // A stop counts like ten degrees.
                var shaded = (double.IsNaN(clear) ? Clear(place.ShadeOnFacade, sun) : clear) < 0;
                height = Math.Min(height, Math.Clamp(10 * Math.Log2(light!.Lux(sun, aboveAir, shaded) / least), -100, 100));
            }

            return height;
        }

        var lowest = wish.SunOnFacade || least <= 0 ? -1.5 : DarkestDegrees;
        var spans = new List<LightWindow>();
        foreach (var (begin, end, aboveAir) in strength.Months)
        {
            foreach (var span in SunSpans.Find(begin, end, place.Position, sun => Height(sun, aboveAir), Angle.FromDegrees(lowest)))
            {
                if (spans.Count > 0 && spans[^1].End == span.Start)
                {
                    spans[^1] = new LightWindow(spans[^1].Start, span.End);
                }
                else
                {
                    spans.Add(span);
                }
            }
        }

        var track = SunTrack.Over(from, to);
        var observer = new Observer(place.Position);
        var air = Atmosphere.At(place.Position);
        SkyPosition SunAt(DateTimeOffset instant) => track.Sight(observer, AstronomicalTime.From(instant).DaysUniversal).Seen(air);
        return [.. spans.Select(span => Best(span, place, exposure, light, SunAt, strength))];
    }

    private static PlaceWindow Best(
        LightWindow span, OutingPlace place, FacadeExposure? exposure, FacadeLightCurve? light, Func<DateTimeOffset, SkyPosition> sunAt, SunStrength strength)
    {
        var (best, sunAtBest, most) = (span.Start, default(SkyPosition), double.NegativeInfinity);
        for (var i = 0; i <= Samples; i++)
        {
            var instant = span.Start + (span.Length * i / Samples);
            var sun = sunAt(instant);
            var value = light is null
                ? sun.Elevation.Degrees
                : light.Lux(sun, strength.At(instant), Clear(place.ShadeOnFacade, sun) < 0);
            if (value > most)
            {
                (best, sunAtBest, most) = (instant, sun, value);
            }
        }

        return new PlaceWindow(
            span,
            best,
            exposure?.TimeFor(Luminance.FromCandelasPerSquareMetre(most * place.Reflectance.Fraction / Math.PI)),
            sunAtBest);
    }

    private static double Clear(IReadOnlyList<Obstacle> obstacles, SkyPosition sun)
    {
        var clear = double.PositiveInfinity;
        for (var i = 0; i < obstacles.Count; i++)
        {
            clear = Math.Min(clear, obstacles[i].ClearanceDegrees(sun));
        }

        return clear;
    }

    // Off the hole where it is behind the camera's front, or hidden from the hole by something.
    private static double OffHole(FrameAim aim, IReadOnlyList<Obstacle> shade, SkyPosition sun)
        => Math.Max(-Math.Asin(Math.Clamp(aim.AxisCosine(sun), -1, 1)) * (180 / Math.PI), shade.Count == 0 ? -180 : -Clear(shade, sun));
}
