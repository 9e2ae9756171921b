using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>One patch of a strip that was made and measured.</summary>
public sealed record StripPatch
{
    private StripPatch(Duration time, Duration timingSpread, Density density, double densitySpread, bool fogged)
    {
        Time = time;
        TimingSpread = timingSpread;
        Density = density;
        DensitySpread = densitySpread;
        Fogged = fogged;
    }

    /// <summary>All its light, counted as time; zero for a patch that was masked.</summary>
    public Duration Time { get; }

    /// <summary>Standard deviation of that time.</summary>
    public Duration TimingSpread { get; }

    /// <summary>Reflection density, dry.</summary>
    public Density Density { get; }

    /// <summary>Standard deviation of the density as it was read.</summary>
    public double DensitySpread { get; }

    /// <summary>Whether it got so much light that more would change nothing.</summary>
    public bool Fogged { get; }

    /// <summary>A patch that was exposed for a known time.</summary>
    /// <param name="time">Its light, 0.01 s to a day.</param>
    /// <param name="density">Its density.</param>
    /// <param name="densitySpread">Standard deviation of the reading, 0.001 to 0.5.</param>
    /// <param name="timingSpread">Standard deviation of the time; none where nothing is said.</param>
    /// <exception cref="RefusalException">A value out of its range.</exception>
    public static StripPatch Exposed(Duration time, Density density, double densitySpread, Duration timingSpread = default)
    {
        Guard.Within(time.Seconds, 0.01, 86_400, "the time of a patch", "s");
        Guard.Within(timingSpread.Seconds, 0, time.Seconds, "the spread of a patch's time", "s");
        return new StripPatch(time, timingSpread, density, Spread(densitySpread), false);
    }

    /// <summary>A patch that saw no light.</summary>
    public static StripPatch Masked(Density density, double densitySpread) => new(default, default, density, Spread(densitySpread), false);

    /// <summary>A patch that got so much light that more would change nothing.</summary>
    public static StripPatch FullyFogged(Density density, double densitySpread) => new(default, default, density, Spread(densitySpread), true);

    private static double Spread(double value) => Guard.Within(value, 0.001, 0.5, "the spread of a density");
}
