using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Storage;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;

namespace Foramen.Field.Bench.Chambers;

/// <summary>A camera's chamber: from hole to paper by two marks on a print, what the sheet then sees, and how the light falls off over it.</summary>
public sealed class ChamberState
{
    private readonly JournalSession session;
    private readonly Ulid camera;
    private readonly UnitSystem units;

    /// <summary>The chamber of a camera.</summary>
    public ChamberState(JournalSession session, Ulid camera, UnitSystem units)
    {
        (this.session, this.camera, this.units) = (session, camera, units);
        Look();
    }

    /// <summary>The camera as last described; null where the journal knows none of this id.</summary>
    public CameraDefinition? Camera => session.Ledger.Cameras.Find(camera)?.Current.Body;

    /// <summary>How far apart the marks are.</summary>
    public string Apart { get; private set; } = "";

    /// <summary>How far they are from the hole.</summary>
    public string Away { get; private set; } = "";

    /// <summary>How far apart they are on the print.</summary>
    public string OnPrint { get; private set; } = "";

    /// <summary>What was measured; null until all three are there.</summary>
    public ChamberMeasurement? Measured { get; private set; }

    /// <summary>The angles of the camera as measured, or as described where nothing was.</summary>
    public FieldAngles? Field { get; private set; }

    /// <summary>The falloff of that camera.</summary>
    public FalloffMap? Falloff { get; private set; }

    /// <summary>Why there is no picture of the camera.</summary>
    public string? Refusal { get; private set; }

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>Takes how far apart the marks are.</summary>
    public void SayApart(string text) => Look(() => Apart = text);

    /// <summary>Takes how far from the hole they are.</summary>
    public void SayAway(string text) => Look(() => Away = text);

    /// <summary>Takes how far apart they are on the print.</summary>
    public void SayOnPrint(string text) => Look(() => OnPrint = text);

    /// <summary>Writes the distance into the journal: the camera's next version.</summary>
    /// <exception cref="StoreRefusedException">It could not be kept.</exception>
    public async Task UseAsync()
    {
        if (Measured is { } measured)
        {
            await session.AppendAsync(new ChamberMeasured
            {
                Camera = camera,
                FocalDistanceMillimetres = measured.FocalDistance.Millimetres,
                FocalDistanceSdMillimetres = measured.FocalDistance.Millimetres * measured.RelativeSd,
            });
        }
    }

    private void Look(Action change)
    {
        change();
        Look();
    }

    private void Look()
    {
        (Measured, Field, Falloff, Refusal) = (null, null, null, null);
        Messages.Clear();
        if (Camera is not { } definition)
        {
            return;
        }

        try
        {
            Measured = Measure();
            var box = (Measured is { } measured ? definition.WithChamber(measured) : definition).ToCamera();
            (Field, Falloff) = (box.Field(), FalloffMap.Of(box));
        }
        catch (RefusalException e)
        {
            (Measured, Refusal) = (null, e.Message);
        }
    }

    // What was not typed yet is not wrong; once all three are there, the Engine says what does not fit together.
    private ChamberMeasurement? Measure()
    {
        var apart = Read(nameof(Apart), Apart, () => 1000 * Distances.Read(Apart, 0.01, 100, "the distance between the marks", units));
        var away = Read(nameof(Away), Away, () => 1000 * Distances.Read(Away, 0.05, 1000, "the distance from the hole to the marks", units));
        var seen = Read(nameof(OnPrint), OnPrint, () => Lengths.Read(OnPrint, 3, 2000, "the distance of the marks on the print", units));
        return apart is { } s && away is { } d && seen is { } p
            ? ChamberMeasurement.Of(Length.FromMillimetres(s), Length.FromMillimetres(d), Length.FromMillimetres(p))
            : null;
    }

    private double? Read(string field, string text, Func<double> read)
        => text.Trim().Length > 0 && Messages.Try(field, read) is var value && double.IsFinite(value) ? value : null;
}
