using Bunit;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Judge;
using Foramen.Field.Sheets.Plan;
using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
using Foramen.Field.Texts;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;
using Microsoft.Extensions.DependencyInjection;

namespace Foramen.Field.Tests.Sheets.Judge;

/// <summary>A print of two tones on grey card, as the plan foretells them or otherwise, measured where its tones lie.</summary>
public sealed class PrintMeasureStateTests : IDisposable
{
    private const double Card = 0.35;
    private static readonly string PrintHash = new('a', 64);
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    [Fact]
    public async Task Tones_are_measured_where_they_came_to_lie_and_taken_into_the_judgement()
    {
        var (sheet, plan) = await ExposedAsync();
        double[] planned = [.. plan.Forecast!.Tones.Select(tone => tone.Density.Value)];
        field.Pictures.Next = Print(sheet, planned[0], planned[1]);
        var state = new PrintMeasureState(sheet, field.Services.GetRequiredService<SheetScene>(), field.Pictures) { Ground = "0.35" };
        await state.MeasureAsync(PrintHash, Xunit.TestContext.Current.CancellationToken);
        Assert.Null(state.Message);
        Assert.True(state.Comparison!.Lie.Mirrored);
        Assert.All(state.Tones.Zip(planned), pair => Assert.Equal(pair.Second, pair.First.Measured!.Density.Value, 0.05));

        var verdict = new JudgeState(sheet).Tones[0];
        verdict.TakeMeasured(state.Tones[0].Measured!);
        Assert.Equal(plan.Forecast.Tones[0].FromAim!.Value.Value, verdict.ToJudged().LighterByStops, 0.25);
        Assert.Equal(planned[0], verdict.ToJudged().MeasuredDensity!.Value, 0.05);
        verdict.Move(1);
        Assert.Null(verdict.ToJudged().MeasuredDensity);
    }

    [Fact]
    public async Task It_says_how_far_it_is_and_can_be_stopped_at_any_stretch()
    {
        var (sheet, plan) = await ExposedAsync();
        double[] planned = [.. plan.Forecast!.Tones.Select(tone => tone.Density.Value)];
        field.Pictures.Next = Print(sheet, planned[0], planned[1]);
        var state = new PrintMeasureState(sheet, field.Services.GetRequiredService<SheetScene>(), field.Pictures) { Ground = "0.35" };
        for (var stretch = 1; stretch < state.Stretches; stretch++)
        {
            using var stop = new CancellationTokenSource();
            state.Moved = () => { if (state.Done == stretch) { stop.Cancel(); } };
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => state.MeasureAsync(PrintHash, stop.Token));
            Assert.Equal(stretch, state.Done);
            Assert.Null(state.Comparison);
            Assert.Empty(state.Tones);
        }

        var seen = new List<int>();
        state.Moved = () => seen.Add(state.Done);
        await state.MeasureAsync(PrintHash, Xunit.TestContext.Current.CancellationToken);
        Assert.NotNull(state.Comparison);
        Assert.Equal(Enumerable.Range(1, state.Stretches - 1), seen);
    }

    [Fact]
    public async Task A_measurement_shows_its_progress_and_a_way_to_stop_it()
    {
        var (sheet, plan) = await ExposedAsync();
        double[] planned = [.. plan.Forecast!.Tones.Select(tone => tone.Density.Value)];
        field.Pictures.Next = Print(sheet, planned[0], planned[1]);
        var page = field.Render<MeasurePrint>(p => p.Add(one => one.Sheet, sheet).Add(one => one.Hash, PrintHash).Add(one => one.Address, "blob:x"));
        page.Find("#measure-ground").Input("0.35");
        var measuring = page.FindAll("button").First(button => button.TextContent == Words.Measured.Do).ClickAsync(new());
        page.WaitForElement("#measure-progress");
        await page.Find("#measure-cancel").ClickAsync(new());
        await measuring;
        page.WaitForAssertion(() => Assert.Contains(Words.Measured.Stopped, page.Markup, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("#measure-tones"));
        Assert.Empty(page.FindAll("#measure-progress"));
    }

    [Fact]
    public async Task Corners_can_be_touched_where_they_are_not_found()
    {
        var (sheet, plan) = await ExposedAsync();
        double[] planned = [.. plan.Forecast!.Tones.Select(tone => tone.Density.Value)];
        field.Pictures.Next = Print(sheet, planned[0], planned[1], touchingTheBorder: true);
        var state = new PrintMeasureState(sheet, field.Services.GetRequiredService<SheetScene>(), field.Pictures) { Ground = "0.35" };
        await state.MeasureAsync(PrintHash, Xunit.TestContext.Current.CancellationToken);
        Assert.Contains("border", state.Message, StringComparison.Ordinal);
        Assert.Empty(state.Corners);

        foreach (var (x, y) in new[] { (0.1, 0.1), (0.9, 0.1), (0.9, 0.9), (0.1, 0.9) })
        {
            state.Touch(x, y);
        }

        await state.MeasureAsync(PrintHash, Xunit.TestContext.Current.CancellationToken);
        Assert.Null(state.Message);
        Assert.All(state.Tones.Zip(planned), pair => Assert.Equal(pair.Second, pair.First.Measured!.Density.Value, 0.05));
    }

    [Theory]
    [InlineData("", "4")]
    [InlineData("grey", "4")]
    [InlineData("3", "4")]
    [InlineData("0.35", "-1")]
    public async Task What_cannot_be_is_said_beside_its_field(string ground, string rim)
    {
        var (sheet, _) = await ExposedAsync();
        var state = new PrintMeasureState(sheet, field.Services.GetRequiredService<SheetScene>(), field.Pictures) { Ground = ground, Rim = rim };
        await state.MeasureAsync(PrintHash, Xunit.TestContext.Current.CancellationToken);
        Assert.NotNull(ground == "0.35" ? state.RimMessage : state.GroundMessage);
        Assert.Null(state.Comparison);
    }

    private async Task<(SheetState Sheet, PlanState Plan)> ExposedAsync()
    {
        var (sheet, plan) = await JudgedSheets.PlannedAsync(field);
        Assert.True(await plan.KeepAsync());
        await field.Session.AppendAsync(new HoleOpened { Sheet = sheet.Id });
        field.Time.Advance(TimeSpan.FromSeconds(plan.Exposure.Time.Seconds));
        await field.Session.AppendAsync(new HoleClosed { Sheet = sheet.Id });
        return (sheet, plan);
    }

    // The sheet over the middle four fifths of the picture, a rim of 4 mm that no light fell on; the coating looks back, so left and right have changed places.
    private static TakenPicture Print(SheetState sheet, double left, double right, bool touchingTheBorder = false)
    {
        const int Width = 1000;
        var box = sheet.Camera!.ToCamera();
        var (across, down) = (box.Sheet.Width.Millimetres + 8, box.Sheet.Height.Millimetres + 8);
        var height = (int)Math.Round(Width * down / across);
        var unexposed = sheet.Paper!.ToPaper().Curve.UnexposedDensity.Value;
        var rgba = new byte[4 * Width * height];
        for (var i = 0; i < Width * height; i++)
        {
            var (u, v) = (((i % Width / (double)Width) - 0.1) / 0.8, ((i / Width / (double)height) - 0.1) / 0.8);
            var (x, y) = (u * across, v * down);
            var isSheet = u is >= 0 and < 1 && v is >= 0 and < 1;
            var isRim = x < 4 || y < 4 || x > across - 4 || y > down - 4;
            var density = touchingTheBorder && i / Width < 4 && i % Width is > 300 and < 700 ? 1.2
                : touchingTheBorder && u is > 0.4 and < 0.6 && v < 0 ? 1.2
                : !isSheet ? Card
                : isRim ? unexposed
                : u > 0.5 ? left
                : right;
            var light = 0.8 * Math.Pow(10, -density);
            var code = (byte)Math.Round(255 * (light <= 0.0031308 ? 12.92 * light : (1.055 * Math.Pow(light, 1 / 2.4)) - 0.055));
            (rgba[4 * i], rgba[(4 * i) + 1], rgba[(4 * i) + 2], rgba[(4 * i) + 3]) = (code, code, code, 255);
        }

        return new TakenPicture(PrintHash, "image/png", [1], Width, height, Width, height, rgba);
    }
}
