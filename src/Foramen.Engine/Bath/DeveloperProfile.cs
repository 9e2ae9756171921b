using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// What is believed of a developer before and after its own sheets have spoken. Every number may be replaced by the user's own.
/// Immutable; each property refuses what is out of its range.
/// </summary>
public sealed record DeveloperProfile
{
    private static readonly Temperature Twenty = Temperature.FromCelsius(20);

    private readonly double activityLimit = 0.6;
    private readonly double appearanceFactor = 7.5;
    private readonly double openLossPerHour = 0.02;
    private readonly double closedLossPerDay = 0.01;
    private readonly double ageingFactor = 2;
    private readonly double knownTo = 2.5;
    private readonly Spread<double> capacity = new(4, 5.7, 8);
    private readonly Density referenceDensity = Density.FromValue(0.7);
    private readonly Duration time = Duration.FromSeconds(75);
    private readonly Duration minimum = Duration.FromSeconds(70);

    /// <summary>A paper developer of the metol-hydroquinone kind at working strength, as handbooks and common practice have it.</summary>
    public static DeveloperProfile Paper { get; } = new();

    /// <summary>Time of a fresh bottle at 20 °C, 1 to 3600 s. Default 75 s (common practice, no source: 70 to 75 s).</summary>
    public Duration Time
    {
        get => time;
        init => time = Duration.FromSeconds(Guard.Within(value.Seconds, 1, 3600, "the development time", "s"));
    }

    /// <summary>Shortest time of a fresh bottle at 20 °C that gives full black, 1 to 3600 s. Default 70 s (common practice, no source).</summary>
    public Duration Minimum
    {
        get => minimum;
        init => minimum = Duration.FromSeconds(Guard.Within(value.Seconds, 1, 3600, "the shortest development time", "s"));
    }

    /// <summary>
    /// Temperature laws; low, middle and high by their steepness. Default Q10 1.9, 2.0 and 2.5 from 20 °C
    /// (Clerc sec. 573 gives 2.07; handbook tables 1.9 to 2.8, from memory).
    /// </summary>
    public Spread<TemperatureCoefficient> Temperatures { get; init; } = new(
        TemperatureCoefficient.FromQ10(1.9, Twenty),
        TemperatureCoefficient.FromQ10(2.0, Twenty),
        TemperatureCoefficient.FromQ10(2.5, Twenty));

    /// <summary>
    /// Area per litre, m²/l, that would bring a fresh bottle to nothing if each sheet took the same; 0.1 to 100, rising. Default 4, 5.7, 8:
    /// paper developers are usually given up after 1.3 to 2.5 m²/l (from memory), taken as a loss of about a third.
    /// </summary>
    public Spread<double> CapacitySquareMetresPerLitre
    {
        get => capacity;
        init
        {
            foreach (var each in new[] { value.Low, value.Middle, value.High })
            {
                Guard.Within(each, 0.1, 100, "the developer's capacity", "m²/l");
            }

            if (value.Low > value.Middle || value.Middle > value.High)
            {
                throw new RefusalException("The developer's capacity should be given as low, middle and high, each not below the one before.");
            }

            capacity = value;
        }
    }

    /// <summary>Mean density above the paper's white that the capacity is for; 0.1 to 2.5. A sheet twice as dark takes twice as much.</summary>
    public Density ReferenceDensity
    {
        get => referenceDensity;
        init => referenceDensity = Density.FromValue(Guard.Within(value.Value, 0.1, 2.5, "the mean density the capacity is for"));
    }

    /// <summary>Activity below which no time makes up for it; 0.3 to 0.95. Default 0.6 (our choice).</summary>
    public double ActivityLimit
    {
        get => activityLimit;
        init => activityLimit = Guard.Within(value, 0.3, 0.95, "the activity at which the developer is replaced");
    }

    /// <summary>Development time over the time of first appearance, 2 to 60. Default 7.5 (common practice, no source: 6 to 9 on coated paper).</summary>
    public double AppearanceFactor
    {
        get => appearanceFactor;
        init => appearanceFactor = Guard.Within(value, 2, 60, "the appearance factor");
    }

    /// <summary>Part of the activity lost per hour in an open tray at 20 °C, 0 to 1. Default 0.02 (common practice, no source: a tray lasts a day).</summary>
    public double OpenLossPerHour
    {
        get => openLossPerHour;
        init => openLossPerHour = Guard.Within(value, 0, 1, "the loss per hour in the open");
    }

    /// <summary>Part of the activity lost per day in a closed full bottle at 20 °C, 0 to 1. Default 0.01 (common practice, no source: weeks).</summary>
    public double ClosedLossPerDay
    {
        get => closedLossPerDay;
        init => closedLossPerDay = Guard.Within(value, 0, 1, "the loss per day in a closed bottle");
    }

    /// <summary>How far off the ageing may be, as a factor of its rate both ways, 1 to 10. Default 2 (our choice: common practice gives no source).</summary>
    public double AgeingFactor
    {
        get => ageingFactor;
        init => ageingFactor = Guard.Within(value, 1, 10, "the factor by which the ageing may be off");
    }

    /// <summary>By-products beyond which nothing is known, m²/l, 0.1 to 100. Default 2.5: where handbooks give paper developers up (from memory).</summary>
    public double KnownToSquareMetresPerLitre
    {
        get => knownTo;
        init => knownTo = Guard.Within(value, 0.1, 100, "the area per litre up to which the developer is known", "m²/l");
    }

    /// <summary>Age beyond which nothing is known. Default 30 days (common practice, no source: working strength keeps some weeks).</summary>
    public Duration KnownAge { get; init; } = Duration.FromSeconds(30 * 86400);

    /// <summary>Litres of a fresh solution that one sheet would use up: e·V for a sheet of this area and mean density, at a capacity.</summary>
    internal double LitresSpent(Area area, Density mean, double capacitySquareMetresPerLitre)
        => area.SquareMetres * (mean.Value / ReferenceDensity.Value) / capacitySquareMetresPerLitre;
}
