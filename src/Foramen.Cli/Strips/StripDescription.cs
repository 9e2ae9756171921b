using Foramen.Engine.Paper;
using Foramen.Journal.Bodies;
using Foramen.Journal.Strips;

namespace Foramen.Cli.Strips;

/// <summary>A strip in a file of its own: what was made and what was read on it, with the members of <c>strip.made</c> and <c>strip.read</c>.</summary>
internal sealed record StripDescription
{
    public required double OnStripLux { get; init; }

    public required double LightKelvin { get; init; }

    public double? LightSdStops { get; init; }

    public required IReadOnlyList<double> Seconds { get; init; }

    public bool? InSeveralOpenings { get; init; }

    public StripReader By { get; init; } = StripReader.Eye;

    public IReadOnlyList<double?>? Densities { get; init; }

    public double? DensitySd { get; init; }

    public double? MaskedDensity { get; init; }

    public double? FoggedDensity { get; init; }

    public int? FirstTone { get; init; }

    public int? LastTone { get; init; }

    public StripMatch? Match { get; init; }

    public string? Note { get; init; }

    /// <summary>The strip the Engine can fit.</summary>
    /// <exception cref="Engine.Quantities.RefusalException">A value out of its range.</exception>
    public Strip ToStrip()
    {
        var made = new StripMade
        {
            Strip = default,
            Paper = default,
            Purpose = StripPurpose.Curve,
            OnStripLux = OnStripLux,
            LightKelvin = LightKelvin,
            LightSdStops = LightSdStops,
            Seconds = Seconds,
            InSeveralOpenings = InSeveralOpenings,
        };
        return made.ToStrip(new StripRead
        {
            Strip = default,
            By = By,
            Densities = Densities,
            DensitySd = DensitySd,
            MaskedDensity = MaskedDensity,
            FoggedDensity = FoggedDensity,
            FirstTone = FirstTone,
            LastTone = LastTone,
            Match = Match,
        });
    }
}
