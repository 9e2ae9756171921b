using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Bottles;

/// <summary>From a developer or fixer as written down to what the Engine's Bath computes with; common practice for what nobody has said.</summary>
public static class DeveloperReading
{
    private static readonly Temperature Twenty = Temperature.FromCelsius(20);

    /// <summary>What is believed of the developer; <see cref="DeveloperProfile.Paper"/> where null.</summary>
    /// <exception cref="RefusalException">A value outside its range.</exception>
    public static DeveloperProfile ToProfile(this DeveloperDefinition? said)
    {
        var usual = DeveloperProfile.Paper;
        if (said is null)
        {
            return usual;
        }

        // A capacity of one's own keeps the spread that handbooks have around theirs.
        var handbook = usual.CapacitySquareMetresPerLitre;
        var scale = (said.CapacitySquareMetresPerLitre ?? handbook.Middle) / handbook.Middle;
        var law = said.Q10 is { } q10 ? TemperatureCoefficient.FromQ10(q10, Twenty) : null;
        return usual with
        {
            Time = said.TimeSeconds is { } time ? Duration.FromSeconds(time) : usual.Time,
            Minimum = said.MinimumSeconds is { } minimum ? Duration.FromSeconds(minimum) : usual.Minimum,
            Temperatures = law is null ? usual.Temperatures : new(law, law, law),
            CapacitySquareMetresPerLitre = new(handbook.Low * scale, handbook.Middle * scale, handbook.High * scale),
            ActivityLimit = said.ActivityLimit ?? usual.ActivityLimit,
            AppearanceFactor = said.AppearanceFactor ?? usual.AppearanceFactor,
            OpenLossPerHour = said.OpenLossPerHour ?? usual.OpenLossPerHour,
            ClosedLossPerDay = said.ClosedLossPerDay ?? usual.ClosedLossPerDay,
            KnownAge = said.KnownDays is { } days ? Duration.FromSeconds(days * 86_400) : usual.KnownAge,
        };
    }

    /// <summary>How far the fixer may be used; <see cref="FixerLimits.FirstBath"/> for what is not said.</summary>
    /// <exception cref="RefusalException">A value outside its range.</exception>
    public static FixerLimits ToLimits(this FixerDefinition? said) => FixerLimits.From(
        said?.SilverLimitGramsPerLitre ?? FixerLimits.FirstBath.SilverGramsPerLitre,
        said?.AreaLimitSquareMetresPerLitre ?? FixerLimits.FirstBath.SquareMetresPerLitre);

    /// <summary>What fixes.</summary>
    /// <exception cref="RefusalException">A word that is not known.</exception>
    public static FixerKind ToKind(this FixerDefinition? said) => said?.Kind switch
    {
        null or "ammoniumPaper" => FixerKind.AmmoniumPaper,
        "ammoniumStrong" => FixerKind.AmmoniumStrong,
        "sodium" => FixerKind.Sodium,
        var word => throw new RefusalException($"The kind of fixer is “{word}”; it should be ammoniumStrong, ammoniumPaper or sodium."),
    };
}
