using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Kit;

/// <summary>From a paper as written down to a paper the Engine can compute with, and the starting values for what nobody has measured.</summary>
public static class PaperReading
{
    /// <summary>Dmin where nobody has measured it (from memory of ordinary papers, 0.04 to 0.10).</summary>
    public const double AssumedMinimumDensity = 0.08;

    /// <summary>Dmax where nobody has measured it (from memory: glossy papers 1.9 to 2.2).</summary>
    public const double AssumedMaximumDensity = 1.98;

    /// <summary>ISO range of a negative-working paper nobody has measured: a medium grade.</summary>
    public const double AssumedNegativeRange = 110;

    /// <summary>Range of a direct-positive paper nobody has measured; an assumption.</summary>
    public const double AssumedPositiveRange = 90;

    /// <summary>Standard deviation of Schwarzschild's p where nobody has measured it.</summary>
    public const double AssumedExponentSd = 0.05;

    /// <summary>Sane starting values for a box of which nothing is known; its first strip or judged sheet will do better.</summary>
    /// <param name="name">What its owner calls the box.</param>
    /// <param name="kind"><c>negative</c> or <c>directPositive</c>.</param>
    public static PaperDefinition Unknown(string name, string kind) => new()
    {
        Name = name,
        Kind = kind,
        Speed = KindOf(kind) == PaperKind.NegativeWorking
            ? new SpeedDefinition { ExposureIndex = 4, AtSeconds = 60, LightKelvin = 5500, SdStops = 0.8 }
            : new SpeedDefinition { ExposureIndex = 2.5, AtSeconds = 120, LightKelvin = 5500, SdStops = 0.8 },
        Note = "Starting values for an unknown paper. Make a test strip, or judge a first sheet, to do better.",
    };

    /// <summary>The paper the Engine computes with.</summary>
    /// <exception cref="RefusalException">A value is missing, unknown or outside its range.</exception>
    public static PhotographicPaper ToPaper(this PaperDefinition definition)
    {
        var kind = KindOf(definition.Kind);
        var failure = ToLaw(definition.Failure);
        var speed = ToSpeed(definition.Speed);
        var paper = PhotographicPaper.FromSpeed(
            definition.Name,
            kind,
            Density.FromValue(definition.DMin ?? AssumedMinimumDensity),
            Density.FromValue(definition.DMax ?? AssumedMaximumDensity),
            definition.IsoRange ?? (kind == PaperKind.NegativeWorking ? AssumedNegativeRange : AssumedPositiveRange),
            speed,
            SensitivityOf(definition.Sensitivity),
            failure,
            definition.Asymmetry ?? 1);
        return paper with
        {
            SpeedSpread = Stops.FromValue(Guard.Within(
                definition.Speed.SdStops ?? PhotographicPaper.AssumedSpeedSpread.Value, 0, 4, "the spread of the paper's speed", "stops")),
            FailureSpreadPerDoubling = Guard.Within(definition.Failure?.ExponentSd ?? AssumedExponentSd, 0, 0.5, "the spread of the failure exponent"),
        };
    }

    private static PaperKind KindOf(string kind) => kind switch
    {
        "negative" => PaperKind.NegativeWorking,
        "directPositive" => PaperKind.DirectPositive,
        _ => throw new RefusalException($"The paper's kind is \"{kind}\"; it should be negative or directPositive."),
    };

    private static PaperSensitivity SensitivityOf(string? sensitivity) => sensitivity switch
    {
        null or "blue" => PaperSensitivity.BlueSensitive,
        "variableContrast" => PaperSensitivity.VariableContrast,
        _ => throw new RefusalException($"The paper's sensitivity is \"{sensitivity}\"; it should be blue or variableContrast."),
    };

    private static PaperSpeed ToSpeed(SpeedDefinition speed) => (speed.IsoSpeed, speed.ExposureIndex, speed.AtSeconds) switch
    {
        ({ } iso, null, _) => IsoPaperSpeed.FromValue(iso),
        (null, { } index, { } seconds) => ExposureIndex.Found(
            index,
            Duration.FromSeconds(seconds),
            LightColour.FromTemperature(ColourTemperature.FromKelvin(speed.LightKelvin ?? 5500)),
            MeterConstants.Usual),
        (null, { }, null) => throw new RefusalException("The paper's exposure index comes without the time it was found at; say the seconds, because failure makes it another number at another time."),
        ({ }, { }, _) => throw new RefusalException("The paper has both an ISO speed and an exposure index; keep the one that was measured."),
        _ => throw new RefusalException("The paper has no speed; give its ISO paper speed, or an exposure index and the time it was found at."),
    };

    private static FailureLaw ToLaw(FailureDefinition? failure) => failure switch
    {
        null => SchwarzschildFailure.Assumed,
        { Law: "schwarzschild", Exponent: { } exponent } => SchwarzschildFailure.FromExponent(exponent),
        { Law: "additivePower", ExtraSecondsAtOneSecond: { } extra } => AdditivePowerFailure.FromExtraAtOneSecond(extra),
        { Law: "table", Rows: { } rows } => MeasuredFailure.FromTable([.. rows.Select(row => row is [var metered, var needed]
            ? (Duration.FromSeconds(metered), Duration.FromSeconds(needed))
            : throw new RefusalException("A row of the failure table should hold two numbers: metered seconds and seconds needed."))]),
        _ => throw new RefusalException($"The failure law \"{failure.Law}\" is unknown or lacks its number; use schwarzschild with an exponent, additivePower with extraSecondsAtOneSecond, or table with rows."),
    };
}
