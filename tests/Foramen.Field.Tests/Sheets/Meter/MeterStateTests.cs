using Foramen.Engine.Light;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Meter;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal.Bodies;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Sheets.Meter;

public sealed class MeterStateTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    // ISO 12232, standard output sensitivity: code 118 stands for 10/S lx s, H = 0.65·L·t/N², so L = 10·4·500/(0.65·50) = 615.4 cd/m².
    [Fact]
    public async Task A_touch_on_the_photograph_is_a_reading()
    {
        var (sheet, meter) = await OpenAsync();
        Assert.True(await meter.ReadPlaceAsync(0.25, 0.5, "wall", WantedRendering.Mid));
        Assert.True(await meter.ReadPlaceAsync(0.75, 0.5, "quay", WantedRendering.TexturedHighlight));
        Assert.Equal(615.4, sheet.Sheet!.Tones[0].Body.LuminanceCandelasPerSquareMetre, 1.0);
        var ladder = meter.Ladder();
        Assert.Equal(Math.Log2(0.4910 / 0.1812), ladder.Rungs[1].Stops - ladder.Rungs[0].Stops, 0.02);
        Assert.True(ladder.Top > 0 && ladder.Bottom < 0 && ladder.WithFlash < ladder.Bottom);
    }

    [Fact]
    public async Task A_photograph_without_exposure_is_anchored_by_the_first_reading_of_a_place_in_it()
    {
        var (sheet, meter) = await OpenAsync(withExposure: false);
        Assert.False(meter.TouchReads);
        Assert.False(await meter.ReadPlaceAsync(0.25, 0.5, "wall", WantedRendering.Mid));
        Assert.NotNull(meter.Message);
        Assert.Empty(sheet.Sheet!.Tones);

        // EV 10 is 128 cd/m² (ISO 2720, K = 12.5); the right half is 0.4910/0.1812 times that.
        Assert.True(await meter.ReadPlaceAsync(0.25, 0.5, "wall", WantedRendering.Mid, "EV 10"));
        Assert.True(meter.TouchReads);
        Assert.True(await meter.ReadPlaceAsync(0.75, 0.5, "quay", WantedRendering.TexturedHighlight));
        Assert.Equal(128 * 0.4910 / 0.1812, sheet.Sheet!.Tones[1].Body.LuminanceCandelasPerSquareMetre, 2.0);
    }

    [Fact]
    public async Task Readings_by_hand_need_no_photograph()
    {
        var sheet = await field.LoadedSheetAsync();
        var meter = new MeterState(sheet, field.Services.GetRequiredService<SheetScene>());
        await meter.LoadAsync();
        Assert.False(meter.HasPhotograph);
        Assert.True(await meter.ReadByHandAsync("wall", WantedRendering.Mid, "3200 cd/m2"));
        Assert.False(await meter.ReadByHandAsync("door", WantedRendering.OpenShadow, "12"));
        Assert.Contains("EV 12.3", meter.Message, StringComparison.Ordinal);
        Assert.Single(sheet.Sheet!.Tones);
    }

    [Fact]
    public async Task Tones_can_be_wanted_otherwise_and_taken_off()
    {
        var (sheet, meter) = await OpenAsync();
        await meter.ReadPlaceAsync(0.25, 0.5, "wall", WantedRendering.Mid);
        var tone = sheet.Sheet!.Tones[0].Body.Tone;
        Assert.True(await meter.RenderAsync(tone, WantedRendering.MayBlock));
        Assert.Equal(WantedRendering.MayBlock, sheet.Sheet!.Tones.Single().Body.Rendering);
        Assert.True(await meter.RemoveAsync(tone));
        Assert.Empty(sheet.Sheet!.Tones);
    }

    // The journal says so before the scene has been read anew, and pages are drawn when the journal changes.
    [Fact]
    public async Task The_ladder_can_be_drawn_while_a_tone_is_taken_off()
    {
        var (sheet, meter) = await OpenAsync();
        await meter.ReadPlaceAsync(0.25, 0.5, "wall", WantedRendering.Mid);
        await meter.ReadPlaceAsync(0.75, 0.5, "quay", WantedRendering.TexturedHighlight);
        var drawn = 0;
        field.Session.Changed += () => drawn = meter.Ladder().Rungs.Count;
        Assert.True(await meter.RemoveAsync(sheet.Sheet!.Tones[0].Body.Tone));
        Assert.Equal(2, drawn);
        Assert.Single(meter.Ladder().Rungs);
    }

    [Fact]
    public async Task The_light_is_kept_with_the_tones()
    {
        var (sheet, meter) = await OpenAsync();
        await meter.ReadPlaceAsync(0.25, 0.5, "wall", WantedRendering.Mid);
        Assert.True(await meter.ChangeLightAsync(LightColour.OpenShade));
        var again = new MeterState(sheet, field.Services.GetRequiredService<SheetScene>());
        await again.LoadAsync();
        Assert.Equal(LightColour.OpenShade, again.Light);
    }

    private async Task<(SheetState Sheet, MeterState Meter)> OpenAsync(bool withExposure = true)
    {
        var sheet = await field.LoadedSheetAsync();
        await ScenePictures.AddAsync(field, sheet, withExposure);
        var meter = new MeterState(sheet, field.Services.GetRequiredService<SheetScene>());
        await meter.LoadAsync();
        return (sheet, meter);
    }
}
