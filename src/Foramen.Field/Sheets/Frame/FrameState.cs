using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Exif;
using Foramen.Field.Sheets.Motions;
using Foramen.Field.Storage;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;

namespace Foramen.Field.Sheets.Frame;

/// <summary>
/// What the sheet will see: the photograph, the frame over it while it is moved, or distances by hand. The photograph is written when it is taken,
/// the frame when it is chosen.
/// </summary>
public sealed class FrameState
{
    /// <summary>
    /// How far off a box without a finder may point, percent of the sheet; a subject nearer to the edge may be cut off. Common practice, no source:
    /// two degrees of a sheet that sees sixty.
    /// </summary>
    public const double AimingErrorPercent = 3;

    private readonly SheetState sheet;
    private readonly SheetScene scene;
    private readonly IPictures pictures;
    private string fieldText = "";
    private FrameView? whole;
    private FrameView? closer;
    private SheetOrientation orientation;

    /// <summary>Begins where the journal left off; then <see cref="LoadAsync"/>.</summary>
    public FrameState(SheetState sheet, SheetScene scene, IPictures pictures, UnitSystem units)
    {
        (this.sheet, this.scene, this.pictures) = (sheet, scene, pictures);
        Hand = new HandFrame(units);
        try
        {
            Camera = sheet.Camera?.ToCamera();
            CameraMessage = Camera is null ? Words.Frame.NoCamera : null;
        }
        catch (RefusalException e)
        {
            CameraMessage = e.Message;
        }

        orientation = Camera is { } camera && camera.Sheet.Height > camera.Sheet.Width ? SheetOrientation.Upright : SheetOrientation.Level;
        if (sheet.Sheet?.Frame?.Body is not { } frame)
        {
            return;
        }

        orientation = frame.Orientation;
        (PanDegrees, TiltDegrees) = (frame.AimPanDegrees ?? 0, frame.AimTiltDegrees ?? 0);
        fieldText = frame.PhotographFieldDegrees is { } field ? NumberText.Show(field) : "";
        ByHand = frame.DistanceMetres is not null;
        Hand.Fill(frame);
    }

    /// <summary>The camera; null where it is not known or cannot be.</summary>
    public PinholeCamera? Camera { get; }

    /// <summary>Why there is no camera; null where there is.</summary>
    public string? CameraMessage { get; }

    /// <summary>The photograph; null where there is none to draw.</summary>
    public ScenePhotograph? Photo { get; private set; }

    /// <summary>An address to draw it by.</summary>
    public string? PictureUrl { get; private set; }

    /// <summary>What is wrong with the file chosen last; null where nothing is.</summary>
    public string? PhotoMessage { get; private set; }

    /// <summary>What the file does not say, or says wrongly, in sentences.</summary>
    public IReadOnlyList<string> PhotoNotes { get; private set; } = [];

    /// <summary>What the photograph covers; null where it is not known yet.</summary>
    public PhotographField? Field { get; private set; }

    /// <summary>Whether the file does not say what it covers.</summary>
    public bool AsksField => Photo is { Facts.FocalLength35mm: null };

    /// <summary>What is wrong with the angle that was typed.</summary>
    public string? FieldMessage { get; private set; }

    /// <summary>The angle from left to right as typed, degrees.</summary>
    public string FieldText
    {
        get => fieldText;
        set
        {
            fieldText = value;
            FindField(all: false);
        }
    }

    /// <summary>Distances by hand instead of a photograph.</summary>
    public bool ByHand { get; set; }

    /// <summary>The distances.</summary>
    public HandFrame Hand { get; }

    /// <summary>How the sheet stands.</summary>
    public SheetOrientation Orientation
    {
        get => orientation;
        set
        {
            orientation = value;
            FindView();
        }
    }

    /// <summary>The camera's axis to the right of the photograph's, degrees.</summary>
    public double PanDegrees { get; private set; }

    /// <summary>The camera's axis above that of the photograph, which counts as level, degrees.</summary>
    public double TiltDegrees { get; private set; }

    /// <summary>The subject that was marked; null where none was.</summary>
    public RectangleInPhotograph? Subject { get; private set; }

    /// <summary>What is being marked as moving; null where nothing is.</summary>
    public MotionForm? Moving { get; set; }

    /// <summary>Regions that were marked as moving.</summary>
    public IReadOnlyList<MotionDefinition> Motions => [.. (sheet.Sheet?.Motions ?? []).Where(one => one.Body.Motion != Moving?.Changing).Select(one => one.Body.Definition)];

    /// <summary>The window that the overlay shows; null where no frame can be drawn.</summary>
    public FrameView? View => closer ?? whole;

    /// <summary>Whether the overlay shows a part of the photograph, enlarged.</summary>
    public bool IsCloser => closer is not null;

    /// <summary>Shows what is marked enlarged, or all again.</summary>
    public void LookCloser(bool look) => closer = look && Marked is { } mark && Photo is { } photo ? whole?.CloserTo((mark.Middle.X, mark.Middle.Y), photo) : null;

    /// <summary>What the sheet sees; null where camera, photograph or its field is missing.</summary>
    public SheetProjection? Projection => Camera is { } camera && Field is { } covered
        ? SheetScene.Project(camera, covered, orientation, PanDegrees, TiltDegrees)
        : null;

    /// <summary>Room about the subject; null where none is marked.</summary>
    public FrameMargins? Margins => Projection is { } projection && Subject is { } subject ? FrameMargins.Of(projection, subject) : null;

    /// <summary>Farthest pan that leaves the axis in the photograph, degrees.</summary>
    public double MostPan => Field is { } covered ? HalfDegreesDown(covered.Horizontal.Degrees / 2) : 0;

    /// <summary>Farthest tilt that leaves the axis in the photograph, degrees.</summary>
    public double MostTilt => Field is { } covered ? HalfDegreesDown(covered.Vertical.Degrees / 2) : 0;

    /// <summary>Reads the stored photograph.</summary>
    public async Task LoadAsync()
    {
        if (sheet.Sheet?.Photograph?.Body is null)
        {
            return;
        }

        Photo = await scene.PhotographAsync(sheet);
        PictureUrl = await scene.ObjectUrlAsync(sheet);
        PhotoMessage = Photo is null ? scene.Complaint ?? Words.Frame.NotHere : null;
        PhotoNotes = Notes([]);
        FindField(all: false);
    }

    /// <summary>Takes the photograph that an input holds: kept whole, its facts read, written to the journal. What was there stays if it cannot be.</summary>
    public async Task TakeAsync(string inputId)
    {
        PhotoMessage = null;
        TakenPicture? taken;
        try
        {
            taken = await pictures.TakeAsync(inputId, SheetScene.LongSide);
        }
        catch (Exception e) when (e is RefusalException or StoreRefusedException)
        {
            PhotoMessage = e.Message;
            return;
        }

        if (taken is null)
        {
            return;
        }

        var facts = PhotographFactsReader.Read(taken.File);
        var added = new PhotographAdded
        {
            Sheet = sheet.Id,
            ContentHash = taken.ContentHash,
            WidthPixels = taken.FullWidth,
            HeightPixels = taken.FullHeight,
            MediaType = taken.MediaType,
            ByteCount = taken.File.Length,
            Facts = SheetScene.Written(facts),
        };
        if (!await sheet.WriteAsync(added))
        {
            PhotoMessage = sheet.Refusal;
            return;
        }

        scene.Remember(added, taken);
        ByHand = false;
        Subject = null;
        (PanDegrees, TiltDegrees) = (0, 0);
        fieldText = "";
        await LoadAsync();
        PhotoNotes = Notes(facts.Doubts);
    }

    /// <summary>Points the camera, no farther than the photograph goes.</summary>
    public void Aim(double panDegrees, double tiltDegrees)
        => (PanDegrees, TiltDegrees) = (Math.Clamp(panDegrees, -MostPan, MostPan), Math.Clamp(tiltDegrees, -MostTilt, MostTilt));

    /// <summary>Where the camera's axis meets the photograph, in fractions.</summary>
    public (double X, double Y) AxisPlace()
    {
        var (pan, tilt) = (double.DegreesToRadians(PanDegrees), double.DegreesToRadians(TiltDegrees));
        return Field is { } field ? field.Locate(Math.Tan(pan), Math.Tan(tilt) / Math.Cos(pan)) : (0.5, 0.5);
    }

    /// <summary>Points the camera's axis at a place of the photograph, in fractions.</summary>
    public void AimAt(double x, double y)
    {
        if (Field is not { } field)
        {
            return;
        }

        var (right, up) = field.DirectionOf(PhotographPosition.FromFractions(Math.Clamp(x, 0, 1), Math.Clamp(y, 0, 1)));
        var pan = Math.Atan(right);
        Aim(double.RadiansToDegrees(pan), double.RadiansToDegrees(Math.Atan(up * Math.Cos(pan))));
    }

    /// <summary>Marks the subject, or what moves, by two opposite corners, in fractions; what is too small to be meant marks nothing.</summary>
    public void Mark((double X, double Y) from, (double X, double Y) to) => Marked = MarkedArea.Between(from, to) ?? Marked;

    /// <summary>Moves the mark, or its lower right corner, by fractions of the photograph; sets one in the middle where there is none.</summary>
    public void NudgeMark(double x, double y, bool corner) => Marked = MarkedArea.Nudged(Marked, x, y, corner);

    private RectangleInPhotograph? Marked
    {
        get => Moving is { } moving ? moving.Place : Subject;
        set
        {
            if (Moving is { } moving)
            {
                moving.Place = value;
            }
            else
            {
                Subject = value;
            }
        }
    }

    /// <summary>No subject.</summary>
    public void ClearMark() => Subject = null;

    /// <summary>Writes the frame. False: something is wrong, and the message stands beside it.</summary>
    public async Task<bool> ChooseAsync()
    {
        if (Frame() is not { } frame)
        {
            return false;
        }

        return frame == sheet.Sheet?.Frame?.Body || await sheet.WriteAsync(frame);
    }

    private FrameChosen? Frame()
    {
        var bare = new FrameChosen { Sheet = sheet.Id, Orientation = orientation };
        if (ByHand)
        {
            return Camera is null || Hand.IsEmpty ? bare : FrameByHand(bare);
        }

        if (Photo is null)
        {
            return bare;
        }

        // An angle that was typed wrongly is said; one that was not given is not needed to go on.
        FindField(all: fieldText.Trim().Length > 0);
        if (FieldMessage is not null)
        {
            return null;
        }

        var frame = Field is null || Camera is null ? bare : bare with
        {
            AimPanDegrees = PanDegrees,
            AimTiltDegrees = TiltDegrees,
            PhotographFieldDegrees = AsksField ? Field.Horizontal.Degrees : null,
        };
        return Margins is not { } margins ? frame : frame with
        {
            MarginLeftPercent = Percent(margins.Left),
            MarginRightPercent = Percent(margins.Right),
            MarginTopPercent = Percent(margins.Top),
            MarginBottomPercent = Percent(margins.Bottom),
        };
    }

    private FrameChosen? FrameByHand(FrameChosen bare)
    {
        if (Hand.Work(Camera!, orientation, all: true) is not { } result)
        {
            return null;
        }

        var fit = Hand.Tilted ? result.Tilted : result.Level;
        return bare with
        {
            AimTiltDegrees = fit.Tilt.Degrees,
            MarginTopPercent = Percent(fit.MarginTop),
            MarginBottomPercent = Percent(fit.MarginBottom),
            DistanceMetres = result.Subject.Distance.Metres,
        };
    }

    private void FindField(bool all)
    {
        FieldMessage = null;
        Field = null;
        if (Photo is { } photo)
        {
            try
            {
                double? asked = AsksField && (all || fieldText.Trim().Length > 0)
                    ? NumberText.Read(fieldText, 1, 140, Words.Frame.FieldWhat, "°")
                    : null;
                Field = SheetScene.FieldOf(photo, asked);
            }
            catch (RefusalException e)
            {
                FieldMessage = e.Message;
            }
        }

        if (Field is not null)
        {
            Aim(PanDegrees, TiltDegrees);
        }

        FindView();
    }

    private void FindView()
    {
        closer = null;
        whole = Camera is { } camera && Field is { } field ? FrameView.Of(camera, field, orientation) : null;
    }

    private IReadOnlyList<string> Notes(IReadOnlyList<string> doubts) => Photo is not { } photo ? [] :
    [
        .. doubts,
        .. photo.Facts.HasExposure ? Array.Empty<string>() : [Words.Frame.NoExposure],
        .. AsksField ? [Words.Frame.NoField] : Array.Empty<string>(),
    ];

    // In the steps of the sliders; a last bit lost in the tangent must not cost one.
    private static double HalfDegreesDown(double degrees) => Math.Floor((2 * degrees) + 1e-6) / 2;

    private static double Percent(double part) => Math.Clamp(Math.Round(100 * part, 2), -1000, 100);
}
