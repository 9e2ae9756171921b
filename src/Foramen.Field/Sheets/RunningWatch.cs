using Foramen.Field.Device;
using Foramen.Field.Settings;
using Foramen.Field.Storage;
using Foramen.Field.Time;

namespace Foramen.Field.Sheets;

/// <summary>
/// Looks after all that runs, whichever page is open: plans its signals, vibrates when a time is over, and keeps the screen awake. What it knows is worked out from
/// the journal and the wall clock, so that it is the same after a reload.
/// </summary>
public sealed class RunningWatch : IDisposable
{
    // Times that are worked out anew differ by rounding; what is planned already and stays is not touched, so that a signal that is being heard goes on.
    private static readonly TimeSpan Same = TimeSpan.FromMilliseconds(50);

    // So long a signal may still be heard: what ends meanwhile silences it.
    private static readonly TimeSpan Heard = TimeSpan.FromSeconds(3);

    private readonly JournalSession session;
    private readonly Clock clock;
    private readonly ISignals signals;
    private readonly IWake wake;
    private readonly IPlatform platform;
    private readonly SettingsKeeper keeper;
    private List<(Signal Signal, DateTimeOffset At)> planned = [];
    private ITimer? timer;
    private bool awake;

    /// <summary>Looks after what runs from the next change of the journal on, or from <see cref="FollowAsync"/>.</summary>
    public RunningWatch(JournalSession session, Clock clock, ISignals signals, IWake wake, IPlatform platform, SettingsKeeper keeper)
    {
        (this.session, this.clock, this.signals, this.wake, this.platform, this.keeper) = (session, clock, signals, wake, platform, keeper);
        session.Changed += Follow;
        platform.Returned += PlanAnew;
        keeper.Changed += PlanAnew;
        signals.Ready += PlanAnew;
    }

    /// <summary>All that runs, as it was when it was last looked at.</summary>
    public IReadOnlyList<RunningThing> Things { get; private set; } = [];

    /// <summary><see cref="Things"/> may have changed.</summary>
    public event Action? Changed;

    /// <summary>Looks again at what runs.</summary>
    public async Task FollowAsync()
    {
        Things = RunningThing.Of(session, clock);
        if (Things.Count > 0)
        {
            await signals.PrepareAsync();
        }

        Plan(anew: false);
        if (awake != Things.Count > 0)
        {
            awake = !awake;
            await (awake ? wake.HoldAsync() : wake.ReleaseAsync());
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        session.Changed -= Follow;
        platform.Returned -= PlanAnew;
        keeper.Changed -= PlanAnew;
        signals.Ready -= PlanAnew;
        timer?.Dispose();
    }

    // The sound's own clock may have stood still while the page was away; a sound that was not allowed yet is now, or no longer wanted.
    private void PlanAnew()
    {
        Things = RunningThing.Of(session, clock);
        Plan(anew: true);
    }

    private void Follow() => _ = FollowAsync();

    private void Plan(bool anew)
    {
        var now = clock.Now;
        var wanted = Things
            .SelectMany(thing => thing.Cues.Select(at => (Signal: Signal.Cue, At: at)).Concat(thing.Due is { } due ? [(Signal.End, due)] : []))
            .Where(one => one.At > now - Heard)
            .OrderBy(one => one.At)
            .ToList();
        var kept = planned.FindAll(one => one.At > now - Heard);
        if (anew || kept.Count != wanted.Count || kept.Zip(wanted).Any(pair => pair.First.Signal != pair.Second.Signal || (pair.First.At - pair.Second.At).Duration() > Same))
        {
            signals.Cancel();
            foreach (var (signal, at) in keeper.Current.Sound ? wanted.FindAll(one => one.At > now) : [])
            {
                signals.Play(signal, at - now);
            }

            planned = wanted;
            VibrateAtNext();
        }

        Changed?.Invoke();
    }

    private void VibrateAtNext()
    {
        timer?.Dispose();
        timer = null;
        var now = clock.Now;
        var ends = planned.FindAll(one => one.Signal == Signal.End && one.At > now);
        if (ends.Count > 0)
        {
            timer = clock.Time.CreateTimer(_ => Vibrate(), null, ends[0].At - now + TimeSpan.FromMilliseconds(5), Timeout.InfiniteTimeSpan);
        }
    }

    private void Vibrate()
    {
        if (keeper.Current.Vibration)
        {
            signals.Vibrate(400, 200, 400, 200, 800);
        }

        VibrateAtNext();
    }
}
