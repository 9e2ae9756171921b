using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>
/// Standard deviations of everything that can put a sheet off its plan, in stops. The defaults are assumptions (no source with standard deviations
/// for this craft is known to us); paper, failure, colour and hole come from what is known of the gear.
/// </summary>
public sealed record ExposureErrors
{
    /// <summary>Speed of the paper.</summary>
    public Stops Paper { get; init; } = Stops.FromValue(0.35);

    /// <summary>Failure at the planned time.</summary>
    public Stops Failure { get; init; }

    /// <summary>The meter as a whole.</summary>
    public Stops Meter { get; init; } = Stops.FromValue(0.25);

    /// <summary>Light drifting during the exposure: 0.2 in fair weather, 0.5 under broken cloud.</summary>
    public Stops Light { get; init; } = Stops.FromValue(0.20);

    /// <summary>Colour of the light.</summary>
    public Stops Colour { get; init; } = Stops.FromValue(0.30);

    /// <summary>The square of the f-number: 2·lg2(1 + relative spread), those of diameter and focal distance added as squares; 5 % is 0.14 stop.</summary>
    public Stops Hole { get; init; } = Stops.FromValue(0.14);

    /// <summary>Development.</summary>
    public Stops Development { get; init; } = Stops.FromValue(0.20);

    /// <summary>Opening and closing by hand: 1 to 2 s in 120 s.</summary>
    public Stops Timing { get; init; } = Stops.FromValue(0.02);

    /// <summary>Strength of the flash.</summary>
    public Stops Flash { get; init; } = Stops.FromValue(0.30);

    /// <summary>The errors of this gear in this light; everything that gear says nothing of as assumed.</summary>
    public static ExposureErrors Of(PinholeCamera camera, PhotographicPaper paper, LightColour light) => Of(camera, paper.SpeedSpread, paper.ColourSpread(light));

    /// <summary>The errors of this gear.</summary>
    /// <param name="camera">The camera.</param>
    /// <param name="paper">Spread of the paper's speed.</param>
    /// <param name="colour">Spread by the colour of the light.</param>
    public static ExposureErrors Of(PinholeCamera camera, Stops paper, Stops colour) => new()
    {
        Paper = paper,
        Colour = colour,
        Hole = Stops.FromValue(2 * Math.Log2(1 + double.Hypot(camera.Hole.DiameterRelativeSd, camera.FocalDistanceRelativeSd))),
    };

    /// <summary>Spread common to image and flash: what acts in the paper and the bath.</summary>
    public Stops OfPaper => Stops.RootSumSquare(Paper, Failure, Development);

    /// <summary>Spread of the image's light, common to all tones: what acts before the paper.</summary>
    public Stops OfImage => Stops.RootSumSquare(Meter, Light, Colour, Hole, Timing);

    /// <summary>The same with one source removed, to ask what it costs.</summary>
    /// <param name="source">The source; tone readings and the scene's range are not among these and change nothing.</param>
    public ExposureErrors Without(ErrorSource source) => source switch
    {
        ErrorSource.Paper => this with { Paper = Stops.Zero },
        ErrorSource.Failure => this with { Failure = Stops.Zero },
        ErrorSource.Meter => this with { Meter = Stops.Zero },
        ErrorSource.Light => this with { Light = Stops.Zero },
        ErrorSource.Colour => this with { Colour = Stops.Zero },
        ErrorSource.Hole => this with { Hole = Stops.Zero },
        ErrorSource.Development => this with { Development = Stops.Zero },
        ErrorSource.Timing => this with { Timing = Stops.Zero },
        ErrorSource.Flash => this with { Flash = Stops.Zero },
        _ => this,
    };

    /// <summary>What remains when a second sheet is made of the same scene minutes later: paper, failure, meter, colour and hole stay wrong alike.</summary>
    public ExposureErrors SharedBySheets => this with { Light = Stops.Zero, Development = Stops.Zero, Timing = Stops.Zero };
}
