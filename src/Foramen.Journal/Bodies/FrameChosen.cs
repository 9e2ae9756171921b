namespace Foramen.Journal.Bodies;

/// <summary>The frame was chosen; the last one counts.</summary>
public sealed record FrameChosen() : SheetBody(EntryKind.FrameChosen)
{
    /// <summary>Upright or level.</summary>
    public required SheetOrientation Orientation { get; init; }

    /// <summary>Camera axis to the right of the photograph's axis, degrees.</summary>
    public double? AimPanDegrees { get; init; }

    /// <summary>Camera axis above the horizon, degrees.</summary>
    public double? AimTiltDegrees { get; init; }

    /// <summary>Bearing of the camera axis from true north, degrees clockwise.</summary>
    public double? BearingDegrees { get; init; }

    /// <summary>Horizontal field of the photograph, degrees, where its file does not say.</summary>
    public double? PhotographFieldDegrees { get; init; }

    /// <summary>Room left of the subject, percent of the sheet's width; negative if cut off.</summary>
    public double? MarginLeftPercent { get; init; }

    /// <summary>Room right of the subject, percent of the sheet's width.</summary>
    public double? MarginRightPercent { get; init; }

    /// <summary>Room above the subject, percent of the sheet's height.</summary>
    public double? MarginTopPercent { get; init; }

    /// <summary>Room below the subject, percent of the sheet's height.</summary>
    public double? MarginBottomPercent { get; init; }

    /// <summary>Distance to the subject, m.</summary>
    public double? DistanceMetres { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        BodyCheck.Optional(AimPanDegrees, -180, 180, "the pan", "degrees");
        BodyCheck.Optional(AimTiltDegrees, -90, 90, "the tilt", "degrees");
        BodyCheck.Optional(BearingDegrees, 0, 360, "the bearing", "degrees");
        BodyCheck.Optional(PhotographFieldDegrees, 1, 180, "the photograph's field", "degrees");
        foreach (var margin in new[] { MarginLeftPercent, MarginRightPercent, MarginTopPercent, MarginBottomPercent })
        {
            BodyCheck.Optional(margin, -1000, 100, "the margin", "%");
        }

        BodyCheck.Optional(DistanceMetres, 0.01, 100_000, "the distance", "m");
        BodyCheck.Note(Note);
    }
}
