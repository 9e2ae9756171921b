using Foramen.Field.Device;
using Foramen.Field.Settings;
using Foramen.Field.Time;
using Microsoft.AspNetCore.Components;

namespace Foramen.Field.Sheets;

/// <summary>
/// A step that counts time down: ticks while something runs, keeps the screen awake and gives the signals. What it shows is worked out from the
/// journal and the wall clock each time.
/// </summary>
public abstract class TimedStep : ComponentBase, IAsyncDisposable
{
    private Ticker? ticker;
    private bool signalled;
    private bool disposed;

    /// <summary>The sheet.</summary>
    [Parameter, EditorRequired] public SheetState Sheet { get; set; } = null!;

    /// <summary>Sounds and vibration.</summary>
    [Inject] protected ISignals Signals { get; set; } = null!;

    /// <summary>Keeps the screen awake.</summary>
    [Inject] protected IWake Wake { get; set; } = null!;

    /// <summary>The device.</summary>
    [Inject] protected IPlatform Platform { get; set; } = null!;

    /// <summary>What the user has chosen.</summary>
    [Inject] protected SettingsKeeper Keeper { get; set; } = null!;

    /// <summary>How what runs stands now; null where nothing runs.</summary>
    protected StepTime? Timing { get; private set; }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        disposed = true;
        Platform.Returned -= OnReturned;
        Wake.Changed -= OnWakeChanged;
        ticker?.Dispose();
        Signals.Cancel();
        await Wake.ReleaseAsync();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        Begin();
        Platform.Returned += OnReturned;
        Wake.Changed += OnWakeChanged;
        Read();
        await Signals.PrepareAsync();
        // From one running sheet to another, the page left behind takes back its signals after this one is made: plan them later than that.
        await Task.Yield();
        await FollowAsync();
    }

    /// <inheritdoc/>
    protected override void OnParametersSet() => Read();

    /// <summary>Makes the step's state.</summary>
    protected abstract void Begin();

    /// <summary>How what runs stands at an instant; null where nothing runs.</summary>
    protected abstract StepTime? TimeAt(DateTimeOffset now);

    /// <summary>When cues are heard, seconds from the beginning.</summary>
    protected virtual IEnumerable<double> CueSeconds() => [];

    /// <summary>The address of a step of this sheet.</summary>
    protected string Address(Journal.Fold.SheetStep step) => $"sheet/{Sheet.Id}/{SheetPage.StepName(step)}";

    /// <summary>After everything that changes the course: tick or not, awake or not, and the signals at their new times.</summary>
    protected async Task FollowAsync()
    {
        Read();
        ticker?.Dispose();
        ticker = null;
        if (disposed)
        {
            return;
        }

        Signals.Cancel();
        signalled = Timing is { IsDone: true };
        if (Timing is not { } timing)
        {
            await Wake.ReleaseAsync();
            return;
        }

        ticker = new Ticker(Sheet.Clock, timing.Since.AddSeconds(timing.PlannedSeconds), () => InvokeAsync(Tick));
        if (Keeper.Current.Sound && timing is { ClockWentBack: false, IsDone: false })
        {
            foreach (var cue in CueSeconds().Where(cue => cue > timing.ElapsedSeconds))
            {
                Signals.Play(Signal.Cue, TimeSpan.FromSeconds(cue - timing.ElapsedSeconds));
            }

            Signals.Play(Signal.End, TimeSpan.FromSeconds(timing.LeftSeconds));
        }

        await Wake.HoldAsync();
    }

    private void Tick()
    {
        Read();
        if (Timing is { IsDone: true } && !signalled)
        {
            signalled = true;
            if (Keeper.Current.Vibration)
            {
                Signals.Vibrate(400, 200, 400, 200, 800);
            }
        }

        StateHasChanged();
    }

    private void Read() => Timing = TimeAt(Sheet.Clock.Now);

    private void OnReturned() => InvokeAsync(Tick);

    private void OnWakeChanged() => InvokeAsync(StateHasChanged);
}
