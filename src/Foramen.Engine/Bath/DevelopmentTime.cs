using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// The time for one sheet in this bottle now: t = t0·f(T)/a, where f is the temperature's factor and a the activity. A paper print is
/// developed to completion, so it needs at least the minimum, and may have twice that without stain (Clerc, sec. 556 and 557); exposure
/// cannot make up for too short a development. Immutable.
/// </summary>
public sealed record DevelopmentTime
{
    private DevelopmentTime()
    {
    }

    /// <summary>The time, and the bounds that activity and temperature law leave.</summary>
    public required Spread<Duration> Time { get; init; }

    /// <summary>Shortest time that gives full black; twice that and longer risks stain.</summary>
    public required Duration Minimum { get; init; }

    /// <summary>Sentences for the user; empty when all is well.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }

    /// <summary>The time for a temperature and an activity.</summary>
    /// <param name="profile">The developer.</param>
    /// <param name="temperature">Of the developer, now.</param>
    /// <param name="activity">1 for fresh; each bound above 0, up to 2.</param>
    /// <exception cref="RefusalException">Outside 10 to 32 °C, or too weak for any time.</exception>
    public static DevelopmentTime For(DeveloperProfile profile, Temperature temperature, Spread<double> activity)
    {
        DeveloperWarmth.Check(temperature);
        Guard.Within(activity.Middle, 0, 2, "the developer's activity");
        Guard.Within(activity.High, activity.Middle, 2, "the upper bound of the activity");
        Guard.Within(activity.Low, 0, activity.Middle, "the lower bound of the activity");
        if (activity.Middle < profile.ActivityLimit)
        {
            throw new RefusalException(string.Create(
                CultureInfo.InvariantCulture,
                $"The developer has about {activity.Middle:P0} of its strength left; below {profile.ActivityLimit:P0} no time makes up for it, so replace it."));
        }

        var warnings = new List<string>();
        if (DeveloperWarmth.Warning(temperature) is { } warmth)
        {
            warnings.Add(warmth);
        }

        // A bound below the limit cannot be followed further than the limit: the time would run beyond what the law is good for.
        var weakest = Math.Max(activity.Low, profile.ActivityLimit);
        if (activity.Low < profile.ActivityLimit)
        {
            warnings.Add(string.Create(
                CultureInfo.InvariantCulture,
                $"The developer may already be below {profile.ActivityLimit:P0} of its strength, where no time makes up for it."));
        }

        if (profile.Time < profile.Minimum)
        {
            warnings.Add("This is below the shortest time that gives full black: more exposure will not make up for it.");
        }

        var laws = profile.Temperatures;
        var factor = laws.Middle.TimeFactor(temperature);
        var low = Math.Min(factor, Math.Min(laws.Low.TimeFactor(temperature), laws.High.TimeFactor(temperature)));
        var high = Math.Max(factor, Math.Max(laws.Low.TimeFactor(temperature), laws.High.TimeFactor(temperature)));
        return new DevelopmentTime
        {
            Time = new(
                Duration.FromSeconds(profile.Time.Seconds * low / activity.High),
                Duration.FromSeconds(profile.Time.Seconds * factor / activity.Middle),
                Duration.FromSeconds(profile.Time.Seconds * high / weakest)),
            Minimum = Duration.FromSeconds(profile.Minimum.Seconds * factor / activity.Middle),
            Warnings = warnings,
        };
    }

    /// <summary>The time in a fresh bottle.</summary>
    /// <exception cref="RefusalException">Outside 10 to 32 °C.</exception>
    public static DevelopmentTime Fresh(DeveloperProfile profile, Temperature temperature) => For(profile, temperature, new(1, 1, 1));
}
