using Foramen.Engine.Quantities;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Frame;
using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Units;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Sheets.Frame;

public sealed class FrameStateTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task Taking_a_photograph_writes_it_with_what_its_file_says()
    {
        var (sheet, state) = await BeginAsync();
        field.Pictures.Next = PictureExamples.CanalBasin();
        await state.TakeAsync("photo-take");

        var added = sheet.Sheet!.Photograph!.Body;
        Assert.Equal((4032, 3024), (added.WidthPixels, added.HeightPixels));
        Assert.Equal(1.0 / 1600, added.Facts!.ExposureSeconds!.Value, 1e-9);
        Assert.Equal(2.2, added.Facts.FNumber!.Value, 1e-9);
        Assert.Equal(50, added.Facts.IsoSpeed);
        Assert.Equal(14, added.Facts.FocalLength35Millimetres);
        Assert.Null(state.PhotoMessage);
        Assert.False(state.AsksField);
        Assert.NotNull(state.Photo!.WhiteLuminance);
    }

    [Fact]
    public async Task A_photograph_that_cannot_be_decoded_leaves_the_one_that_was_there()
    {
        var (sheet, state) = await BeginAsync();
        field.Pictures.Next = PictureExamples.CanalBasin();
        await state.TakeAsync("photo-take");
        var before = sheet.Sheet!.Photograph;
        field.Pictures.Refuse = new RefusalException("This browser cannot read the picture (image/x); choose a JPEG, PNG or WebP file.");
        await state.TakeAsync("photo-choose");

        Assert.Contains("cannot read", state.PhotoMessage, StringComparison.Ordinal);
        Assert.Same(before, sheet.Sheet!.Photograph);
        Assert.NotNull(state.Photo);
    }

    [Fact]
    public async Task A_full_device_says_so_and_nothing_is_lost()
    {
        var (sheet, state) = await BeginAsync();
        field.Pictures.Refuse = new StoreRefusedException(StoreRefusal.Full, "test");
        await state.TakeAsync("photo-take");
        Assert.Contains("no room", state.PhotoMessage, StringComparison.Ordinal);
        Assert.Null(sheet.Sheet!.Photograph);
    }

    [Fact]
    public async Task A_photograph_without_facts_asks_what_it_covers()
    {
        var (sheet, state) = await BeginAsync();
        field.Pictures.Next = PictureExamples.WithoutFacts();
        await state.TakeAsync("photo-take");
        Assert.True(state.AsksField);
        Assert.Null(state.Projection);
        Assert.Equal(2, state.PhotoNotes.Count(note => note.StartsWith("The file does not say", StringComparison.Ordinal)));

        state.FieldText = "300";
        Assert.Contains("300", state.FieldMessage, StringComparison.Ordinal);
        Assert.False(await state.ChooseAsync());
        Assert.Null(sheet.Sheet!.Frame);

        state.FieldText = "90";
        Assert.NotNull(state.Projection);
        Assert.True(await state.ChooseAsync());
        Assert.Equal(90, sheet.Sheet!.Frame!.Body.PhotographFieldDegrees!.Value, 1e-9);
    }

    [Fact]
    public async Task A_photograph_may_be_skipped()
    {
        var (sheet, state) = await BeginAsync();
        state.Orientation = SheetOrientation.Upright;
        Assert.True(await state.ChooseAsync());
        Assert.Equal(new FrameChosen { Sheet = sheet.Id, Orientation = SheetOrientation.Upright }, sheet.Sheet!.Frame!.Body);
    }

    /// <summary>
    /// A photograph of 90° is 100 pixels to the edge at 100 pixels; the sheet is 63.5 mm to its edge at 63 mm. The middle half of the photograph is ±50
    /// and ±37.5 pixels, so ±31.5 and ±23.625 mm of 127 × 102 mm: similar triangles.
    /// </summary>
    [Fact]
    public async Task Margins_to_a_marked_subject_are_written()
    {
        var (sheet, state) = await CoveredAsync();
        state.Mark((0.75, 0.75), (0.25, 0.25));
        Assert.True(await state.ChooseAsync());
        var frame = sheet.Sheet!.Frame!.Body;
        Assert.Equal(100 * (63.5 - 31.5) / 127, frame.MarginLeftPercent!.Value, 0.01);
        Assert.Equal(100 * (63.5 - 31.5) / 127, frame.MarginRightPercent!.Value, 0.01);
        Assert.Equal(100 * (51 - 23.625) / 102, frame.MarginTopPercent!.Value, 0.01);
        Assert.Equal(100 * (51 - 23.625) / 102, frame.MarginBottomPercent!.Value, 0.01);
    }

    [Fact]
    public async Task What_is_too_small_to_be_meant_marks_nothing()
    {
        var (_, state) = await CoveredAsync();
        state.Mark((0.5, 0.5), (0.501, 0.9));
        Assert.Null(state.Subject);
    }

    [Fact]
    public async Task The_mark_can_be_set_moved_and_sized_by_keys_and_stays_in_the_photograph()
    {
        var (_, state) = await CoveredAsync();
        state.NudgeMark(0.01, 0, corner: false);
        Assert.NotNull(state.Subject);
        state.NudgeMark(0.9, 0, corner: false);
        Assert.Equal(1, state.Subject.BottomRight.X, 1e-9);
        state.NudgeMark(-0.9, -0.9, corner: true);
        Assert.True(state.Subject.BottomRight.X > state.Subject.TopLeft.X);
    }

    [Theory]
    [InlineData(0.6, 0.4)]
    [InlineData(0.3, 0.8)]
    public async Task The_axis_goes_where_it_is_dragged(double x, double y)
    {
        var (_, state) = await CoveredAsync();
        state.AimAt(x, y);
        var place = state.AxisPlace();
        Assert.Equal(x, place.X, 1e-9);
        Assert.Equal(y, place.Y, 1e-9);
        // The middle of a sheet with its hole in the middle looks along the axis.
        var middle = state.Projection!.PositionOf(Foramen.Engine.Camera.SheetPoint.Middle)!.Value;
        Assert.Equal(x, middle.X, 1e-9);
        Assert.Equal(y, middle.Y, 1e-9);
    }

    [Fact]
    public async Task The_aim_never_leaves_the_photograph()
    {
        var (_, state) = await CoveredAsync();
        state.Aim(500, -500);
        Assert.Equal(45, state.PanDegrees);
        Assert.Equal(-36.5, state.TiltDegrees); // 75 of 100 pixels: 36.87 degrees, in steps of a half
    }

    [Fact]
    public async Task The_window_holds_photograph_and_sheet()
    {
        var (_, state) = await CoveredAsync();
        var outline = Foramen.Engine.Camera.FrameOutline.Of(state.Projection!).Points;
        Assert.All(outline, p =>
        {
            Assert.InRange(p.X * 200, state.View!.Left, state.View.Left + state.View.Width);
            Assert.InRange(p.Y * 150, state.View.Top, state.View.Top + state.View.Height);
        });
        Assert.True(state.View!.Left <= 0 && state.View.Top <= 0);
    }

    [Fact]
    public async Task What_was_chosen_is_there_again()
    {
        var (sheet, state) = await CoveredAsync();
        state.Orientation = SheetOrientation.Upright;
        state.Aim(5, 3);
        Assert.True(await state.ChooseAsync());
        var again = new FrameState(sheet, new SheetScene(field.Pictures), field.Pictures, UnitSystem.Metric);
        await again.LoadAsync();
        Assert.Equal((5, 3, SheetOrientation.Upright), (again.PanDegrees, again.TiltDegrees, again.Orientation));
        Assert.Equal("90", again.FieldText);
        var lines = field.Store.Lines.Count;
        Assert.True(await again.ChooseAsync());
        Assert.Equal(lines, field.Store.Lines.Count);
    }

    /// <summary>Similar triangles: 20 m high from 2 m below a hole 40 m away, 63 mm before the paper: 28.35 mm up, 3.15 mm down, of 51 mm each.</summary>
    [Fact]
    public async Task By_hand()
    {
        var (sheet, state) = await BeginAsync();
        state.ByHand = true;
        (state.Hand.Distance, state.Hand.Height, state.Hand.Base) = ("40", "20", "−2");
        Assert.True(await state.ChooseAsync());
        var frame = sheet.Sheet!.Frame!.Body;
        Assert.Equal(100 * (51 - 28.35) / 102, frame.MarginTopPercent!.Value, 0.01);
        Assert.Equal(100 * (51 - 3.15) / 102, frame.MarginBottomPercent!.Value, 0.01);
        Assert.Equal(40, frame.DistanceMetres);
        Assert.Equal(0, frame.AimTiltDegrees);
    }

    [Fact]
    public async Task By_hand_half_typed_is_said_beside_the_field_and_not_written()
    {
        var (sheet, state) = await BeginAsync();
        state.ByHand = true;
        (state.Hand.Distance, state.Hand.Height) = ("forty", "");
        Assert.False(await state.ChooseAsync());
        Assert.Contains("number", state.Hand.Message(nameof(HandFrame.Distance)), StringComparison.Ordinal);
        Assert.Contains("missing", state.Hand.Message(nameof(HandFrame.Height)), StringComparison.Ordinal);
        Assert.Equal("forty", state.Hand.Distance);
        Assert.Null(sheet.Sheet!.Frame);
    }

    /// <summary>1 ft = 0.3048 m exactly (international foot, 1959).</summary>
    [Fact]
    public void Feet()
    {
        Assert.Equal(30.48, Distances.Read("100", 0.1, 10_000, "the distance", UnitSystem.Imperial), 1e-9);
        Assert.Equal("100 ft", Distances.Show(30.48, UnitSystem.Imperial));
    }

    private async Task<(SheetState Sheet, FrameState State)> BeginAsync()
    {
        var sheet = await field.LoadedSheetAsync();
        var state = new FrameState(sheet, new SheetScene(field.Pictures), field.Pictures, UnitSystem.Metric);
        await state.LoadAsync();
        return (sheet, state);
    }

    private async Task<(SheetState Sheet, FrameState State)> CoveredAsync()
    {
        var (sheet, state) = await BeginAsync();
        field.Pictures.Next = PictureExamples.WithoutFacts();
        await state.TakeAsync("photo-take");
        state.FieldText = "90";
        return (sheet, state);
    }
}
