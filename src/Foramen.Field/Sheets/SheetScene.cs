using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Field.Storage;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;

namespace Foramen.Field.Sheets;

/// <summary>
/// The sheet's photograph as the engine reads it, and which part of it the sheet sees, by what the journal says. One photograph is kept decoded;
/// asking again costs nothing.
/// </summary>
public sealed class SheetScene(IPictures pictures)
{
    /// <summary>Longest side that a photograph is decoded to, pixels: finer than any hole draws on a sheet, small enough for a phone.</summary>
    public const int LongSide = 1024;

    private PhotographAdded? known;
    private Task<ScenePhotograph?>? loading;

    /// <summary>Why the photograph could not be read, or its field or the camera not be worked with, in a sentence; null where it could, or where there is none.</summary>
    public string? Complaint { get; private set; }

    /// <summary>
    /// The photograph; null where the sheet has none, or it is not on this device, or cannot be read (<see cref="Complaint"/>). Its luminances are
    /// anchored where its file says how it was exposed; else <see cref="ScenePhotograph.WhiteLuminance"/> is null.
    /// </summary>
    public Task<ScenePhotograph?> PhotographAsync(SheetState sheet)
    {
        if (sheet.Sheet?.Photograph?.Body is not { } added)
        {
            return Task.FromResult<ScenePhotograph?>(null);
        }

        if (loading is not null && known == added && (!loading.IsCompleted || loading is { IsCompletedSuccessfully: true, Result: not null }))
        {
            return loading;
        }

        known = added;
        return loading = LoadAsync(added);
    }

    /// <summary>An address to draw the photograph by; null where there is none on this device.</summary>
    public async Task<string?> ObjectUrlAsync(SheetState sheet)
        => sheet.Sheet?.Photograph?.Body.ContentHash is { } hash ? await pictures.AddressOfAsync(hash) : null;

    /// <summary>
    /// What the photograph covers: by the angle given with the frame, else by its file's focal length; null where neither is known or can be
    /// (<see cref="Complaint"/>).
    /// </summary>
    public PhotographField? FieldOf(SheetState sheet, ScenePhotograph photo)
        => Unless(() => FieldOf(photo, sheet.Sheet?.Frame?.Body.PhotographFieldDegrees));

    /// <summary>
    /// What the sheet sees of the photograph, by the frame last chosen (straight along it before that); null where camera or field is not known or
    /// cannot be (<see cref="Complaint"/>).
    /// </summary>
    public SheetProjection? ProjectionOf(SheetState sheet, ScenePhotograph photo)
    {
        var frame = sheet.Sheet?.Frame?.Body;
        return sheet.Camera is { } camera && FieldOf(sheet, photo) is { } field
            ? Unless(() => Project(camera.ToCamera(), field, frame?.Orientation, frame?.AimPanDegrees ?? 0, frame?.AimTiltDegrees ?? 0))
            : null;
    }

    /// <summary>What a photograph covers, with the angle from left to right where it had to be asked for, degrees.</summary>
    internal static PhotographField? FieldOf(ScenePhotograph photo, double? askedDegrees)
    {
        if (askedDegrees is { } degrees)
        {
            return PhotographField.FromHorizontalAngle(photo.Width, photo.Height, Angle.FromDegrees(degrees));
        }

        return photo.Facts.FocalLength35mm is null ? null : PhotographField.Of(photo);
    }

    /// <summary>A projection by a frame; the photograph counts as held level.</summary>
    internal static SheetProjection Project(PinholeCamera camera, PhotographField field, SheetOrientation? orientation, double panDegrees, double tiltDegrees)
        => SheetProjection.Of(
            camera.TiltedTo(Angle.FromDegrees(tiltDegrees)), field, FormatOf(orientation), SheetAim.FromAngles(Angle.FromDegrees(panDegrees)));

    /// <summary>The engine's word for how the sheet stands.</summary>
    internal static SheetFormat? FormatOf(SheetOrientation? orientation) => orientation switch
    {
        SheetOrientation.Upright => SheetFormat.Upright,
        SheetOrientation.Level => SheetFormat.Level,
        _ => null,
    };

    /// <summary>The facts as the journal keeps them.</summary>
    internal static PhotographedHow Written(PhotographFacts facts) => new()
    {
        ExposureSeconds = facts.ExposureTime?.Seconds,
        FNumber = facts.FNumber?.Value,
        IsoSpeed = facts.Speed?.Iso,
        BrightnessValue = facts.BrightnessValue,
        FocalLength35Millimetres = facts.FocalLength35mm?.Millimetres,
        ColourSpace = facts.Colour == PhotographColour.DisplayP3 ? "Display P3" : "sRGB",
        Orientation = facts.Orientation,
        TakenLocal = facts.TakenLocal?.ToString("yyyy-MM-ddTHH:mm:ss", System.Globalization.CultureInfo.InvariantCulture),
    };

    /// <summary>A photograph just taken, so that it need not be decoded again.</summary>
    internal void Remember(PhotographAdded added, TakenPicture picture)
    {
        Complaint = null;
        known = added;
        loading = Task.FromResult<ScenePhotograph?>(Scene(added, picture));
    }

    private T? Unless<T>(Func<T?> make)
        where T : class
    {
        try
        {
            return make();
        }
        catch (RefusalException e)
        {
            Complaint = e.Message;
            return null;
        }
    }

    private static ScenePhotograph Scene(PhotographAdded added, TakenPicture picture)
    {
        var photo = new ScenePhotograph(picture.Width, picture.Height, picture.Rgba, Facts(added.Facts));
        return photo.Facts.HasExposure ? PhotographMeter.AnchorByExposure(photo) : photo;
    }

    // The browser hands out pixels upright and in sRGB, whatever the file was tagged.
    private static PhotographFacts Facts(PhotographedHow? how) => new()
    {
        ExposureTime = Known(how?.ExposureSeconds, Duration.FromSeconds),
        FNumber = Known(how?.FNumber, FNumber.FromValue),
        Speed = Known(how?.IsoSpeed, CameraSpeed.FromIso),
        BrightnessValue = how?.BrightnessValue,
        FocalLength35mm = how?.FocalLength35Millimetres is >= 4 and <= 3000 and { } focal ? Length.FromMillimetres(focal) : null,
        Colour = PhotographColour.Srgb,
    };

    // A journal may hold wider ranges than the engine believes; what it does not believe counts as not known.
    private static T? Known<T>(double? value, Func<double, T> make)
        where T : struct
    {
        try
        {
            return value is { } number ? make(number) : null;
        }
        catch (RefusalException)
        {
            return null;
        }
    }

    private async Task<ScenePhotograph?> LoadAsync(PhotographAdded added)
    {
        Complaint = null;
        try
        {
            return await pictures.ReadAsync(added.ContentHash, LongSide) is { } picture ? Scene(added, picture) : null;
        }
        catch (Exception e) when (e is StoreRefusedException or RefusalException)
        {
            Complaint = e.Message;
            return null;
        }
    }
}
