using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Sheets.Frame;

/// <summary>Framing without a photograph, as it is typed in: texts until they are read, a message beside each that cannot be.</summary>
public sealed class HandFrame(UnitSystem units)
{
    /// <summary>How far away the subject is.</summary>
    public string Distance { get; set; } = "";

    /// <summary>How high it is.</summary>
    public string Height { get; set; } = "";

    /// <summary>Where it begins, against the camera.</summary>
    public string Base { get; set; } = "0";

    /// <summary>Whether the camera is tilted to centre the subject; level otherwise.</summary>
    public bool Tilted { get; set; }

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>Whether nothing was typed.</summary>
    public bool IsEmpty => Distance.Trim().Length == 0 && Height.Trim().Length == 0;

    /// <summary>The message beside a field; null where there is none.</summary>
    public string? Message(string field) => Messages.GetValueOrDefault(field);

    /// <summary>Takes over what the journal knows.</summary>
    public void Fill(FrameChosen frame)
    {
        Distance = frame.DistanceMetres is { } metres ? Distances.Bare(metres, units) : "";
        Tilted = frame.AimTiltDegrees is > 0.05 or < -0.05;
    }

    /// <summary>What it comes to; null where something is missing or wrong.</summary>
    /// <param name="camera">The camera.</param>
    /// <param name="orientation">How the sheet stands.</param>
    /// <param name="all">Whether empty fields count as wrong.</param>
    public HandResult? Work(PinholeCamera camera, SheetOrientation orientation, bool all = false)
    {
        Messages.Clear();
        var distance = Read(nameof(Distance), Distance, 0.1, 10_000, Words.Frame.DistanceWhat, all);
        var height = Read(nameof(Height), Height, 0.01, 1000, Words.Frame.HeightWhat, all);
        var foot = Read(nameof(Base), Base, -1000, 1000, Words.Frame.BaseWhat, all);
        if (distance is null || height is null || foot is null)
        {
            return null;
        }

        var subject = FramingSubject.Of(Length.FromMetres(distance.Value), Length.FromMetres(height.Value), foot.Value);
        var framing = Framing.With(camera, SheetScene.FormatOf(orientation));
        const double Room = FrameState.AimingErrorPercent / 100;
        return new HandResult(
            subject,
            framing.Fit(subject, Angle.Zero),
            framing.Fit(subject, framing.CentringTilt(subject)),
            framing.NearestLevel(subject, Room),
            framing.NearestTilted(subject, Room));
    }

    private double? Read(string field, string text, double min, double max, string what, bool all)
    {
        if (text.Trim().Length == 0 && !all)
        {
            return null;
        }

        var value = Messages.Try(field, () => Distances.Read(text, min, max, what, units));
        return double.IsNaN(value) ? null : value;
    }
}
