using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Field.Storage;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Learning;
using Foramen.Journal.Motions;

namespace Foramen.Field.Sheets.Judge;

/// <summary>A finished print measured on its picture: where it lies, what its tones came out as, and how it compares with the one that was expected.</summary>
public sealed class PrintMeasureState(SheetState sheet, SheetScene scenes, IPictures pictures)
{
    private const int PictureLongSide = 1600;
    private const int PrintLongSide = 480;

    private const int StretchesBefore = 5;
    private const int UsualStages = 7;

    // Long enough for the bar to be drawn and a touch to arrive.
    private static readonly TimeSpan PageTurn = TimeSpan.FromMilliseconds(20);

    private readonly List<PixelPoint> marks = [];
    private TakenPicture? picture;
    private string? read;

    /// <summary>Density of the ground that the print lies on, as typed.</summary>
    public string Ground { get; set; } = "";

    /// <summary>Width of the unexposed rim in mm, as typed.</summary>
    public string Rim { get; set; } = NumberText.Show(4, 0);

    /// <summary>What is wrong with the ground's density.</summary>
    public string? GroundMessage { get; private set; }

    /// <summary>What is wrong with the rim.</summary>
    public string? RimMessage { get; private set; }

    /// <summary>Why nothing was measured, in a sentence.</summary>
    public string? Message { get; private set; }

    /// <summary>Columns of the decoded picture, pixels; nothing before it was read.</summary>
    public int Width => picture?.Width ?? 0;

    /// <summary>Rows of the decoded picture, pixels.</summary>
    public int Height => picture?.Height ?? 0;

    /// <summary>The corners: those that were found, or those that were touched; fewer than four while they are being touched.</summary>
    public IReadOnlyList<PixelPoint> Corners => marks;

    /// <summary>What the comparison says; null before it was made.</summary>
    public PrintComparison? Comparison { get; private set; }

    /// <summary>Each metered tone with what was measured where it came to lie; null where that is beside the sheet, or where it was read by hand.</summary>
    public IReadOnlyList<(Ulid Tone, string Name, MeasuredTone? Measured)> Tones { get; private set; } = [];

    /// <summary>What to be careful about.</summary>
    public IReadOnlyList<string> Doubts { get; private set; } = [];

    /// <summary>How far the camera was aimed off: to the right and up, degrees.</summary>
    public (double Right, double Up) AimedOffDegrees { get; private set; }

    /// <summary>Stretches that the work is done in, with a turn for the page between them; known exactly once the print lies on its picture.</summary>
    public int Stretches { get; private set; } = StretchesBefore + UsualStages;

    /// <summary>How many of the <see cref="Stretches"/> are done.</summary>
    public int Done { get; private set; }

    /// <summary>Called whenever <see cref="Done"/> has changed.</summary>
    public Action? Moved { get; set; }

    /// <summary>Looks for the print and measures it, stretch by stretch; what is wrong stands in the messages.</summary>
    /// <param name="contentHash">The picture of the print.</param>
    /// <param name="stop">Stops it before the next stretch.</param>
    /// <exception cref="OperationCanceledException">It was stopped; nothing was measured.</exception>
    public async Task MeasureAsync(string contentHash, CancellationToken stop = default)
    {
        Done = 0;
        (Comparison, Tones, Doubts, Message, GroundMessage, RimMessage) = (null, [], [], null, null, null);
        if (Typed(Ground, 0, 2, Words.Measured.GroundOf, text => GroundMessage = text) is not { } ground
            || Typed(Rim, 0, 50, Words.Measured.RimOf, text => RimMessage = text) is not { } rim)
        {
            return;
        }

        try
        {
            if (read != contentHash)
            {
                marks.Clear();
                picture = await pictures.ReadAsync(contentHash, PictureLongSide);
                read = contentHash;
            }

            await TurnAsync(stop);
            if (picture is null)
            {
                Message = Words.Measured.NotHere;
                return;
            }

            await CompareAsync(ScanImage.FromRgba(picture.Width, picture.Height, picture.Rgba), Density.FromValue(ground), Length.FromMillimetres(rim), stop);
        }
        catch (Exception e) when (e is RefusalException or StoreRefusedException)
        {
            Message = e.Message;
        }
    }

    /// <summary>Touches a corner: the four in turn, clockwise from the upper left; after that the nearest moves.</summary>
    /// <param name="x">Part of the width, 0 to 1.</param>
    /// <param name="y">Part of the height, 0 to 1.</param>
    public void Touch(double x, double y)
    {
        var place = PixelPoint.At(Math.Clamp(x, 0, 1) * Width, Math.Clamp(y, 0, 1) * Height);
        Comparison = null;
        if (marks.Count < 4)
        {
            marks.Add(place);
            return;
        }

        marks[marks.IndexOf(marks.MinBy(mark => mark.DistanceTo(place)))] = place;
    }

    /// <summary>Forgets the corners, so that they are touched anew.</summary>
    public void TouchAnew()
    {
        marks.Clear();
        Comparison = null;
    }

    private static double? Typed(string text, double least, double most, string what, Action<string> refuse)
    {
        try
        {
            return NumberText.Read(text, least, most, what, "");
        }
        catch (RefusalException e)
        {
            refuse(e.Message);
            return null;
        }
    }

    private async Task CompareAsync(ScanImage scan, Density ground, Length rim, CancellationToken stop)
    {
        var scene = await MeteredScene.OfAsync(sheet, scenes, MeteredScene.LightOf(sheet.Sheet));
        if (scene is not { Photograph: { WhiteLuminance: not null } photograph, Projection: { } projection })
        {
            Message = Words.Measured.NoPhotograph;
            return;
        }

        await TurnAsync(stop);
        if (marks.Count < 4)
        {
            var found = SheetFinder.Find(scan);
            marks.Clear();
            marks.AddRange([found.TopLeft, found.TopRight, found.BottomRight, found.BottomLeft]);
        }

        var corners = new PrintCorners(marks[0], marks[1], marks[2], marks[3]);
        await TurnAsync(stop);
        var light = LightField.Around(scan, corners);
        var setting = new PrintSetting(scan, corners, PrintSetting.ScaleThrough(scan, light, [], ground), light);
        var basis = SheetLesson.BasisOf(sheet.Session.Ledger, sheet.Sheet!);
        var curve = scene.Response.Paper.Curve;
        await TurnAsync(stop);
        var image = SheetImage.Make(
            LuminanceMap.AsPaperSees(photograph, scene.Sight),
            projection,
            PrintLongSide,
            PointSpread.Of(projection.Camera, PaperLight.Of(scene.Response.Light.ToSpectrum(), scene.Response.Paper.Sensitivity)),
            cancellation: stop);
        var given = SheetLesson.GivenExposure(sheet.Sheet!, basis);
        image = AsItMoved(image, scene, given);
        await TurnAsync(stop);
        var laying = PrintLaying.Begin(setting, image, curve, PrintExposure.Of(scene.Response, given, basis.Flash), rim);
        Stretches = StretchesBefore + laying.Stages;
        PrintComparison? comparison;
        while ((comparison = laying.Step(stop)) is null)
        {
            await TurnAsync(stop);
        }

        Tones = [.. scene.Tones.Select(tone => (tone.Id, tone.Tone.Name, comparison.ToneAt(tone.Tone, projection, curve)))];
        Doubts = [.. Doubtful(comparison)];
        AimedOffDegrees = comparison.AimedOffDegrees(projection.Camera);
        Comparison = comparison;
    }

    // The prediction that the print is held against moves as was touched in the tally.
    private SheetImage AsItMoved(SheetImage still, MeteredScene scene, SheetExposure given)
    {
        if (sheet.Sheet is not { Motions.IsEmpty: false } one)
        {
            return still;
        }

        var planned = one.Plan?.Body.ExposureSeconds ?? given.Time.Seconds;
        var courses = SheetMotions.AsItWent(one, scene.Response.Paper.Failure, Duration.FromSeconds(planned), sheet.Clock.Now);
        return MotionOnSheet.Of(still, SheetMotions.Regions(one)).Expose(courses, scene.Response, given.Time);
    }

    private async Task TurnAsync(CancellationToken stop)
    {
        Done++;
        Moved?.Invoke();
        await Task.Delay(PageTurn, stop);
    }

    private static IEnumerable<string> Doubtful(PrintComparison comparison)
    {
        if (comparison.Print.IsClippedLight)
        {
            yield return Words.Measured.ClippedLight;
        }

        if (comparison.Print.IsClippedDark)
        {
            yield return Words.Measured.ClippedDark;
        }
    }
}
