namespace Foramen.Cli.Output;

/// <summary>What <c>foramen sun --json</c> says. Instants carry the offset that the question was asked with.</summary>
internal sealed record SunReport
{
    public required string At { get; init; }

    public required double LatitudeDeg { get; init; }

    public required double LongitudeDeg { get; init; }

    public required double ElevationMetres { get; init; }

    public required double PressureHectopascals { get; init; }

    public required double TemperatureCelsius { get; init; }

    /// <summary>From straight overhead, refraction included, degrees.</summary>
    public required double ZenithDeg { get; init; }

    /// <summary>From true north through east, degrees.</summary>
    public required double AzimuthDeg { get; init; }

    /// <summary>Above the level horizon, refraction included, degrees.</summary>
    public required double ElevationDeg { get; init; }

    /// <summary>Above the level horizon without air, degrees.</summary>
    public required double TrueElevationDeg { get; init; }

    /// <summary>How far a sundial is ahead of the mean clock, minutes.</summary>
    public required double EquationOfTimeMinutes { get; init; }

    /// <summary>"rises and sets", "stays up" or "stays down", in the 24 hours from midnight.</summary>
    public required string Day { get; init; }

    public string? AstronomicalDawn { get; init; }

    public string? NauticalDawn { get; init; }

    public string? CivilDawn { get; init; }

    public string? Rise { get; init; }

    /// <summary>The Sun on the meridian.</summary>
    public string? Transit { get; init; }

    public string? Set { get; init; }

    public string? CivilDusk { get; init; }

    public string? NauticalDusk { get; init; }

    public string? AstronomicalDusk { get; init; }

    public required MoonReport Moon { get; init; }
}
