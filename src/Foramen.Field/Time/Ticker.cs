namespace Foramen.Field.Time;

/// <summary>
/// Calls back just after each whole second counted from an instant. Only for showing: what counts is always worked out from the wall clock.
/// </summary>
public sealed class Ticker : IDisposable
{
    private readonly Clock clock;
    private readonly DateTimeOffset from;
    private readonly Action onSecond;
    private readonly ITimer timer;

    /// <summary>Starts ticking.</summary>
    /// <param name="clock">The clock.</param>
    /// <param name="from">Where whole seconds are counted from.</param>
    /// <param name="onSecond">Called once a second, on the caller's own thread in the browser.</param>
    public Ticker(Clock clock, DateTimeOffset from, Action onSecond)
    {
        this.clock = clock;
        this.from = from;
        this.onSecond = onSecond;
        timer = clock.Time.CreateTimer(_ => Tick(), null, UntilNext(), Timeout.InfiniteTimeSpan);
    }

    /// <inheritdoc/>
    public void Dispose() => timer.Dispose();

    private void Tick()
    {
        timer.Change(UntilNext(), Timeout.InfiniteTimeSpan);
        onSecond();
    }

    private TimeSpan UntilNext()
    {
        var past = (clock.Now - from).TotalMilliseconds % 1000;
        // A little late is right; a little early would show the second before.
        return TimeSpan.FromMilliseconds(1005 - (past < 0 ? past + 1000 : past));
    }
}
