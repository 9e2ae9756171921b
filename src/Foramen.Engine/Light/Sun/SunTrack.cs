using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// The Sun over a span of time, for many instants: its place in space is computed once a day and interpolated by cubics (error below
/// 0.000001°), so that an instant costs little more than the turning of the Earth. Immutable.
/// </summary>
public sealed class SunTrack
{
    private readonly int firstDay;
    private readonly EquatorialVector[] places;
    private readonly double[] equationsOfEquinoxes;

    private SunTrack(int firstDay, int days)
    {
        this.firstDay = firstDay;
        places = new EquatorialVector[days];
        equationsOfEquinoxes = new double[days];
        for (var day = 0; day < days; day++)
        {
            var time = AstronomicalTime.FromDays(firstDay + day);
            var axis = EarthAxis.At(time.Centuries);
            places[day] = Sun.Vector(time.Centuries, axis);
            equationsOfEquinoxes[day] = axis.EquationOfEquinoxes;
        }
    }

    /// <summary>The track from one instant to another.</summary>
    /// <exception cref="RefusalException">Outside 1950 to 2050, or the wrong way round.</exception>
    public static SunTrack Over(DateTimeOffset from, DateTimeOffset to)
    {
        var (first, last) = (AstronomicalTime.From(from).DaysUniversal, AstronomicalTime.From(to).DaysUniversal);
        if (last < first)
        {
            throw new RefusalException("The span of time ends before it begins; give the earlier instant first.");
        }

        // One node more on either side for the cubics.
        var start = (int)Math.Floor(first) - 1;
        return new SunTrack(start, (int)Math.Floor(last) + 3 - start);
    }

    /// <summary>Where the Sun's middle stands.</summary>
    /// <param name="instant">Within the track's span.</param>
    /// <param name="place">The observer.</param>
    /// <param name="air">The air there; usual air for the height if left out.</param>
    /// <exception cref="RefusalException">Outside the span.</exception>
    public SkyPosition At(DateTimeOffset instant, GeographicPosition place, Atmosphere? air = null)
    {
        var days = AstronomicalTime.From(instant).DaysUniversal;
        Guard.Within(days, firstDay + 1, firstDay + places.Length - 2, "the instant, in days from 2000-01-01 12:00,");
        return Sight(new Observer(place), days).Seen(air ?? Atmosphere.At(place));
    }

    /// <summary>Positions at even steps, into a span of the caller's: the fast way for a day's or a year's minutes.</summary>
    /// <param name="from">The first instant.</param>
    /// <param name="step">Time from each to the next.</param>
    /// <param name="place">The observer.</param>
    /// <param name="positions">As many as are wanted; all within the track's span.</param>
    /// <param name="air">The air there; usual air for the height if left out.</param>
    /// <exception cref="RefusalException">Any instant lies outside the span.</exception>
    public void Fill(DateTimeOffset from, TimeSpan step, GeographicPosition place, Span<SkyPosition> positions, Atmosphere? air = null)
    {
        var observer = new Observer(place);
        var here = air ?? Atmosphere.At(place);
        var (start, stepDays) = (AstronomicalTime.From(from).DaysUniversal, step.TotalDays);
        Guard.Within(start, firstDay + 1, firstDay + places.Length - 2, "the first instant, in days from 2000-01-01 12:00,");
        Guard.Within(start + (stepDays * Math.Max(0, positions.Length - 1)), firstDay + 1, firstDay + places.Length - 2, "the last instant, in days from 2000-01-01 12:00,");
        for (var i = 0; i < positions.Length; i++)
        {
            positions[i] = Sight(observer, start + (i * stepDays)).Seen(here);
        }
    }

    /// <summary>The Sun's direction without refraction.</summary>
    internal HorizonVector Sight(Observer observer, double daysUniversal)
    {
        var body = Interpolate(daysUniversal, out var sidereal);
        return observer.Sight(body, sidereal);
    }

    /// <summary>The Sun's place in space and the apparent sidereal time of Greenwich (radians).</summary>
    internal EquatorialVector Interpolate(double daysUniversal, out double siderealTime)
    {
        var day = Math.Clamp((int)Math.Floor(daysUniversal) - firstDay, 1, places.Length - 3);
        var s = daysUniversal - firstDay - day;
        siderealTime = EarthAxis.MeanSiderealTime(daysUniversal)
            + equationsOfEquinoxes[day] + (s * (equationsOfEquinoxes[day + 1] - equationsOfEquinoxes[day]));

        // Lagrange's cubic through the nodes at −1, 0, 1 and 2.
        var a = -s * (s - 1) * (s - 2) / 6;
        var b = (s + 1) * (s - 1) * (s - 2) / 2;
        var c = -(s + 1) * s * (s - 2) / 2;
        var d = (s + 1) * s * (s - 1) / 6;
        ref readonly var p = ref places[day - 1];
        ref readonly var q = ref places[day];
        ref readonly var r = ref places[day + 1];
        ref readonly var t = ref places[day + 2];
        return new EquatorialVector(
            (a * p.X) + (b * q.X) + (c * r.X) + (d * t.X),
            (a * p.Y) + (b * q.Y) + (c * r.Y) + (d * t.Y),
            (a * p.Z) + (b * q.Z) + (c * r.Z) + (d * t.Z));
    }
}
