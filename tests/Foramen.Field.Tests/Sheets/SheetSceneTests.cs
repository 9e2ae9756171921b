using Foramen.Field.Sheets;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Sheets;

public sealed class SheetSceneTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task Without_a_photograph_there_is_nothing_to_see()
    {
        var sheet = await field.LoadedSheetAsync();
        Assert.Null(await new SheetScene(field.Pictures).PhotographAsync(sheet));
    }

    /// <summary>
    /// ISO 12232: code 118 stands for H = 10/S, and H = 0.65·L·t/N²: at f/8, 1/100 s and ISO 100 that is L = 0.1·64/(0.65·0.01) = 984.6 cd/m². Code 118
    /// is 0.1812 of full light by IEC 61966-2-1, so white is 5434 cd/m².
    /// </summary>
    [Fact]
    public async Task Anchored_by_how_the_file_says_it_was_exposed()
    {
        var sheet = await WithAsync(new PhotographedHow { ExposureSeconds = 0.01, FNumber = 8, IsoSpeed = 100 });
        var photo = await new SheetScene(field.Pictures).PhotographAsync(sheet);
        Assert.Equal(5434, photo!.WhiteLuminance!.Value.CandelasPerSquareMetre, 5.0);
    }

    [Fact]
    public async Task Without_exposure_nothing_is_absolute_and_without_focal_length_nothing_is_projected()
    {
        var sheet = await WithAsync(null);
        var scene = new SheetScene(field.Pictures);
        var photo = await scene.PhotographAsync(sheet);
        Assert.Null(photo!.WhiteLuminance);
        Assert.Null(scene.FieldOf(sheet, photo));
        Assert.Null(scene.ProjectionOf(sheet, photo));
    }

    [Fact]
    public async Task The_frame_s_angle_and_aim_are_used()
    {
        var sheet = await WithAsync(null);
        await sheet.WriteAsync(new FrameChosen
        {
            Sheet = sheet.Id, Orientation = SheetOrientation.Upright, AimPanDegrees = 4, AimTiltDegrees = -2, PhotographFieldDegrees = 90,
        });
        var scene = new SheetScene(field.Pictures);
        var photo = await scene.PhotographAsync(sheet);
        Assert.Equal(100, scene.FieldOf(sheet, photo!)!.FocalLengthPixels, 1e-9); // half of 200 pixels under 45 degrees
        var projection = scene.ProjectionOf(sheet, photo!)!;
        Assert.Equal(127, projection.PictureSize.Height.Millimetres, 1e-9);
        Assert.Equal(4, projection.Aim.Pan.Degrees, 1e-9);
        Assert.Equal(-2, projection.Camera.Tilt.Degrees, 1e-9);
    }

    [Fact]
    public async Task It_is_decoded_once()
    {
        var sheet = await WithAsync(null);
        var scene = new SheetScene(field.Pictures);
        var first = await scene.PhotographAsync(sheet);
        field.Pictures.Next = null;
        Assert.Same(first, await scene.PhotographAsync(sheet));
    }

    [Fact]
    public async Task What_the_journal_holds_but_cannot_be_counts_as_not_known()
    {
        var sheet = await WithAsync(new PhotographedHow { FocalLength35Millimetres = 1, FNumber = 8, ExposureSeconds = 0.01, IsoSpeed = 100 });
        var photo = await new SheetScene(field.Pictures).PhotographAsync(sheet);
        Assert.Null(photo!.Facts.FocalLength35mm);
        Assert.True(photo.Facts.HasExposure);
    }

    [Fact]
    public async Task An_angle_that_cannot_be_is_said_and_nothing_projected()
    {
        var sheet = await WithAsync(null);
        await sheet.WriteAsync(new FrameChosen { Sheet = sheet.Id, Orientation = SheetOrientation.Level, PhotographFieldDegrees = 179 });
        var scene = new SheetScene(field.Pictures);
        Assert.Null(scene.ProjectionOf(sheet, (await scene.PhotographAsync(sheet))!));
        Assert.Contains("179", scene.Complaint, StringComparison.Ordinal);
    }

    private async Task<SheetState> WithAsync(PhotographedHow? facts)
    {
        var sheet = await field.LoadedSheetAsync();
        var picture = PictureExamples.WithoutFacts();
        field.Pictures.Next = picture;
        Assert.True(await sheet.WriteAsync(new PhotographAdded
        {
            Sheet = sheet.Id, ContentHash = picture.ContentHash, WidthPixels = 4032, HeightPixels = 3024, MediaType = "image/jpeg", Facts = facts,
        }));
        return sheet;
    }
}
