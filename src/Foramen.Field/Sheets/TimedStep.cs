using Foramen.Field.Device;
using Foramen.Field.Settings;
using Foramen.Field.Time;
using Microsoft.AspNetCore.Components;

namespace Foramen.Field.Sheets;

/// <summary>
/// A step that counts time down: ticks while something runs. What it shows is worked out from the journal and the wall clock each time; signals are the
/// <see cref="RunningWatch"/>'s.
/// </summary>
public abstract class TimedStep : ComponentBase, IDisposable
{
    private Ticker? ticker;
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
    public void Dispose()
    {
        GC.SuppressFinalize(this);
        disposed = true;
        Platform.Returned -= OnReturned;
        Wake.Changed -= OnWakeChanged;
        ticker?.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        Begin();
        Platform.Returned += OnReturned;
        Wake.Changed += OnWakeChanged;
        Read();
        // Ready for the touch that begins it, since sound is allowed by a touch alone.
        await Signals.PrepareAsync();
        Follow();
    }

    /// <inheritdoc/>
    protected override void OnParametersSet() => Read();

    /// <summary>Makes the step's state.</summary>
    protected abstract void Begin();

    /// <summary>How what runs stands at an instant; null where nothing runs.</summary>
    protected abstract StepTime? TimeAt(DateTimeOffset now);

    /// <summary>The address of a step of this sheet.</summary>
    protected string Address(Journal.Fold.SheetStep step) => $"sheet/{Sheet.Id}/{SheetPage.StepName(step)}";

    /// <summary>After everything that changes the course: tick or not.</summary>
    protected void Follow()
    {
        Read();
        ticker?.Dispose();
        ticker = null;
        if (disposed)
        {
            return;
        }

        if (Timing is { } timing)
        {
            ticker = new Ticker(Sheet.Clock, timing.Since.AddSeconds(timing.PlannedSeconds), () => InvokeAsync(Tick));
        }
    }

    private void Tick()
    {
        Read();
        StateHasChanged();
    }

    private void Read() => Timing = TimeAt(Sheet.Clock.Now);

    private void OnReturned() => InvokeAsync(Tick);

    private void OnWakeChanged() => InvokeAsync(StateHasChanged);
}
