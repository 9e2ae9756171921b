using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// The factorial method of A. Watkins: develop for a fixed multiple of the time in which the image first appears. The factor depends on
/// the developer and hardly on its temperature or strength, so one look at the sheet corrects for both. The factors in handbooks are for
/// plates; on paper it is the user's own number. Clerc recommends the method for bromide paper, not for very fast contact papers (sec. 573).
/// </summary>
public static class FactorialDevelopment
{
    /// <summary>The development time for a sheet whose image appeared after <paramref name="appearance"/>.</summary>
    /// <param name="appearance">From the pour to the first visible tone; 0.5 to 600 s.</param>
    /// <param name="factor">2 to 60.</param>
    /// <param name="vessel">Where it is developed.</param>
    /// <exception cref="RefusalException">Outside the ranges, or in a tank in which nothing is seen.</exception>
    public static Duration Time(Duration appearance, double factor, DevelopingVessel vessel)
    {
        if (vessel == DevelopingVessel.ClosedTank)
        {
            throw new RefusalException("The time of appearance cannot be seen in a closed tank; go by temperature and age there.");
        }

        return Duration.FromSeconds(Appeared(appearance) * Guard.Within(factor, 2, 60, "the appearance factor"));
    }

    /// <summary>The activity that a time of appearance shows: t0·f(T)/W over the time seen.</summary>
    /// <param name="profile">The developer.</param>
    /// <param name="temperature">Of the developer, then.</param>
    /// <param name="appearance">From the pour to the first visible tone; 0.5 to 600 s.</param>
    /// <exception cref="RefusalException">Outside 10 to 32 °C or the range of appearance.</exception>
    public static double ActivityShown(DeveloperProfile profile, Temperature temperature, Duration appearance)
        => profile.Time.Seconds * profile.Temperatures.Middle.TimeFactor(DeveloperWarmth.Check(temperature))
            / profile.AppearanceFactor / Appeared(appearance);

    private static double Appeared(Duration appearance) => Guard.Within(appearance.Seconds, 0.5, 600, "the time of appearance", "s");
}
