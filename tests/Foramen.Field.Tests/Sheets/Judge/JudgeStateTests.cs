using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Expose;
using Foramen.Field.Sheets.Judge;
using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;

namespace Foramen.Field.Tests.Sheets.Judge;

public sealed class JudgeStateTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    /// <summary>
    /// Equal effect for equal I·t^p (K. Schwarzschild, Astrophysical Journal 11, 1900): one stop too light at p = 0.9 wants 120·2^(−1/0.9) = 55.55 s;
    /// half a stop too dark 120·2^(0.5/0.9) = 176.4 s. Worked by hand.
    /// </summary>
    [Theory]
    [InlineData(2, 55.55)]
    [InlineData(-1, 176.4)]
    [InlineData(0, 120)]
    public async Task The_next_time_follows_from_the_law_of_the_paper(int halfStops, double seconds)
    {
        var sheet = await JudgeableSheetAsync(120);
        var state = new JudgeState(sheet);
        for (var i = 0; i < Math.Abs(halfStops); i++)
        {
            state.Tones[0].Move(Math.Sign(halfStops));
        }

        var next = state.NextTime(sheet.Clock.Now)!;
        Assert.Equal(seconds, next.NewSeconds, 0.05);
        Assert.Equal(120, next.OldSeconds, 1e-6);
    }

    /// <summary>Closed after half the planned time, the sheet got half of it: the correction starts from what was given, not from what was planned.</summary>
    [Fact]
    public async Task The_correction_starts_from_the_time_that_was_given()
    {
        var sheet = await JudgeableSheetAsync(120, openSeconds: 60);
        Assert.Equal(60, new JudgeState(sheet).NextTime(sheet.Clock.Now)!.OldSeconds, 0.01);
    }

    [Fact]
    public void Going_lighter_and_as_much_darker_leads_back()
    {
        FailureLaw[] laws = [SchwarzschildFailure.FromExponent(0.8), AdditivePowerFailure.FromExtraAtOneSecond(0.1)];
        foreach (var law in laws)
        {
            foreach (var steps in new[] { -4, -1, 1, 3, 6 })
            {
                var there = NextTime.From(law, 90, [Verdict(steps)]);
                Assert.Equal(90, NextTime.From(law, there.NewSeconds, [Verdict(-steps)]).NewSeconds, 1e-6);
                Assert.True(steps > 0 ? there.NewSeconds < 90 : there.NewSeconds > 90);
            }
        }
    }

    [Fact]
    public async Task Tones_that_were_allowed_to_go_do_not_speak_for_the_time()
    {
        var sheet = await JudgeableSheetAsync(120, wanted: [WantedRendering.Mid, WantedRendering.MayBurn]);
        var state = new JudgeState(sheet);
        state.Tones[1].Lose(ToneFate.Burnt);
        Assert.Equal(120, state.NextTime(sheet.Clock.Now)!.NewSeconds, 1e-6);
        state.Tones[0].Lose(ToneFate.Blocked);
        var next = state.NextTime(sheet.Clock.Now)!;
        Assert.True(next.IsBound);
        Assert.Equal(-2, next.LighterByStops);
    }

    [Fact]
    public async Task A_judgement_is_written_and_found_again()
    {
        var sheet = await JudgeableSheetAsync(120);
        var state = new JudgeState(sheet) { Keeper = false, Note = " a gull " };
        state.Tones[0].Lose(ToneFate.Burnt);
        state.Tones[0].Move(1);
        state.Toggle(MishapCause.Motion);
        state.Toggle(MishapCause.Frame);
        state.Toggle(MishapCause.Frame);
        Assert.True(await state.SaveAsync());
        Assert.Equal(SheetStep.Done, sheet.Sheet!.Step);

        var again = new JudgeState(sheet);
        Assert.False(again.Keeper);
        Assert.Equal([MishapCause.Motion], again.Causes);
        Assert.Equal("a gull", again.Note);
        Assert.Equal((2.5, ToneFate.Burnt), (again.Tones[0].LighterByStops, again.Tones[0].Lost));
    }

    [Fact]
    public async Task A_photograph_of_the_print_is_added_and_an_unreadable_one_refused_in_a_sentence()
    {
        var sheet = await JudgeableSheetAsync(120);
        var state = new JudgeState(sheet);
        field.Pictures.Next = new TakenPicture(new string('a', 64), "image/png", [1, 2, 3], 800, 600, 640, 480, []);
        await state.AddPictureAsync(field.Pictures, "any");
        var scan = Assert.Single(sheet.Sheet!.Scans).Body;
        Assert.Equal((800, 600, 3L), (scan.WidthPixels, scan.HeightPixels, scan.ByteCount!.Value));

        field.Pictures.Refuse = new RefusalException("This browser cannot read the picture (image/heic).");
        await state.AddPictureAsync(field.Pictures, "any");
        Assert.Contains("cannot read", state.PictureRefusal, StringComparison.Ordinal);
        Assert.Single(sheet.Sheet.Scans);
    }

    [Fact]
    public async Task The_next_sheet_has_the_same_camera_and_paper()
    {
        var sheet = await JudgeableSheetAsync(120);
        var next = await new JudgeState(sheet).StartNextAsync();
        var started = field.Session.Ledger.Sheets.Find(next!.Value)!.Started!.Body;
        Assert.Equal((sheet.Sheet!.Started!.Body.Camera, sheet.Sheet.Started.Body.Paper), (started.Camera, started.Paper));
        Assert.NotNull(started.Camera);
    }

    private static ToneVerdict Verdict(int halfStops)
    {
        var tone = new ToneVerdict(null, "wall", WantedRendering.Mid);
        tone.Move(halfStops);
        return tone;
    }

    private async Task<SheetState> JudgeableSheetAsync(double planned, double? openSeconds = null, params WantedRendering[] wanted)
    {
        var sheet = await field.PlannedSheetAsync(planned);
        foreach (var rendering in wanted is [] ? [WantedRendering.Mid] : wanted)
        {
            await field.Session.AppendAsync(new ToneRead
            {
                Sheet = sheet.Id, Tone = field.Session.NewId(), Name = "Elevator wall", LuminanceCandelasPerSquareMetre = 900, Rendering = rendering,
            });
        }

        var expose = new ExposeState(sheet);
        await expose.OpenAsync(LightWord.Sun);
        field.Time.Advance(TimeSpan.FromSeconds(openSeconds ?? planned));
        await expose.CloseAsync();
        return sheet;
    }
}
