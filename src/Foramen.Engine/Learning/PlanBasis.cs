using Foramen.Engine.Exposure;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>A scene to be planned, with everything as label and description say.</summary>
public sealed record PlanBasis
{
    /// <summary>Strength of a flash from one sheet to the next, beyond what is believed of all of them (an assumption).</summary>
    public static Stops FlashScatter { get; } = Stops.FromValue(0.15);

    /// <summary>The paper as labelled.</summary>
    public required PhotographicPaper Paper { get; init; }

    /// <summary>The light.</summary>
    public required LightColour Light { get; init; }

    /// <summary>The tones where they lie on the sheet.</summary>
    public required IReadOnlyList<PlacedTone> Tones { get; init; }

    /// <summary>How a flash can be given.</summary>
    public FlashSetup Flash { get; init; } = FlashSetup.None;

    /// <summary>What bears on the sheet.</summary>
    public required SheetConditions Conditions { get; init; }

    /// <summary>Errors as assumed for this gear; light, development and timing are those of a single sheet.</summary>
    public ExposureErrors Errors { get; init; } = new();

    /// <summary>Scatter of a sheet as a whole by these errors, as <see cref="Evidence.Scatter"/> states it.</summary>
    public Stops Scatter => Stops.RootSumSquare(Errors.Light, Errors.Development, Errors.Timing);
}
