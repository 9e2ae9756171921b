using Bunit;
using Foramen.Field.Device;
using Foramen.Field.Homes;
using Foramen.Field.Learning;
using Foramen.Field.Settings;
using Foramen.Field.Sheets;
using Foramen.Field.Sheets.Expose;
using Foramen.Field.Storage;
using Foramen.Field.Time;
using Foramen.Field.Versions;
using Foramen.Journal.Bodies;
using Foramen.Journal.Kit;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;

namespace Foramen.Field.Tests.TestKit;

/// <summary>Field without a browser: a clock that is turned by hand, a store in memory, silent devices.</summary>
internal sealed class FieldContext : BunitContext
{
    public static readonly DateTimeOffset Noon = new(2026, 5, 3, 12, 0, 0, TimeSpan.Zero);

    public FieldContext(MemoryStore? store = null, FakeHome? home = null)
    {
        Home = home ?? new FakeHome();
        Store = store ?? new MemoryStore();
        Services.AddSingleton<TimeProvider>(Time);
        Services.AddSingleton<IPlatform>(Platform);
        Services.AddSingleton<IZone>(Platform);
        Services.AddSingleton<Clock>();
        Services.AddSingleton<IJournalStore>(Store);
        Services.AddSingleton<JournalSession>();
        Services.AddSingleton<Lessons>();
        Services.AddSingleton<Bag>();
        Services.AddSingleton<SettingsKeeper>();
        Services.AddSingleton<IPictures>(Pictures);
        Services.AddSingleton<ISignals>(Signals);
        Services.AddSingleton<IWake>(Wake);
        Services.AddSingleton<RunningWatch>();
        Services.AddSingleton<ILevel>(Level);
        Services.AddSingleton<IShare>(Share);
        Services.AddSingleton<IWhere>(Where);
        Services.AddSingleton<IPrintCanvas>(Canvas);
        Services.AddSingleton<Updates>();
        Services.AddSingleton<IHomeLink>(Home);
        Services.AddSingleton<HomeTie>();
        Services.AddTransient<SheetState>();
        Services.AddSingleton<SheetScene>();
        JSInterop.Mode = JSRuntimeMode.Loose;
        // As the layout does, around every page.
        Services.GetRequiredService<RunningWatch>();
    }

    public FakeTimeProvider Time { get; } = new(Noon);

    public MemoryStore Store { get; }

    public FakePlatform Platform { get; } = new();

    public FakePictures Pictures { get; } = new();

    public FakeSignals Signals { get; } = new();

    public FakeWake Wake { get; } = new();

    public FakeLevel Level { get; } = new();

    public FakeShare Share { get; } = new();

    public FakeWhere Where { get; } = new();

    public FakePrintCanvas Canvas { get; } = new();

    public FakeHome Home { get; }

    public HomeTie Tie => Services.GetRequiredService<HomeTie>();

    public JournalSession Session => Services.GetRequiredService<JournalSession>();

    /// <summary>A sheet in Box A with a paper whose failure is Schwarzschild's with p = 0.9, planned for so many seconds.</summary>
    public async Task<SheetState> PlannedSheetAsync(double exposureSeconds, double flashSeconds = 0)
    {
        var state = await LoadedSheetAsync();
        await Session.AppendAsync(new PlanMade { Sheet = state.Id, ExposureSeconds = exposureSeconds, FlashSeconds = flashSeconds });
        return state;
    }

    /// <summary>A sheet exposed for a minute, as it was planned.</summary>
    public async Task<SheetState> ExposedSheetAsync()
    {
        var sheet = await PlannedSheetAsync(60);
        var expose = new ExposeState(sheet);
        await expose.OpenAsync(LightWord.Sun);
        Time.Advance(TimeSpan.FromSeconds(60));
        await expose.CloseAsync();
        return sheet;
    }

    public async Task<SheetState> LoadedSheetAsync()
    {
        await Session.OpenAsync();
        var (camera, paper, sheet) = (Session.NewId(), Session.NewId(), Session.NewId());
        await Session.AppendAsync(
            new CameraDefined { Camera = camera, Definition = BoxA },
            new PaperDefined { Paper = paper, Definition = Positive },
            new SheetStarted { Sheet = sheet, Camera = camera, Paper = paper, Name = "Elevator" });
        var state = Services.GetRequiredService<SheetState>();
        state.Show(sheet);
        return state;
    }

    public static CameraDefinition BoxA { get; } = new()
    {
        Name = "Box A", HoleDiameterMillimetres = 0.35, FocalDistanceMillimetres = 63, SheetWidthMillimetres = 127, SheetHeightMillimetres = 102,
        PaperShape = "flat",
    };

    public static PaperDefinition Positive { get; } = PaperReading.Unknown("Positive", "directPositive") with
    {
        Failure = new FailureDefinition { Law = "schwarzschild", Exponent = 0.9 },
    };
}
