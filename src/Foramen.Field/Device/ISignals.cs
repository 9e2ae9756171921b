namespace Foramen.Field.Device;

/// <summary>Sounds and vibration. Sound comes only after the first touch of the page.</summary>
public interface ISignals
{
    /// <summary>Sound has become possible: what was played or planned before was not heard and will not be.</summary>
    event Action? Ready;

    /// <summary>Plays a signal after a time, also if the page is hidden meanwhile.</summary>
    void Play(Signal signal, TimeSpan after = default);

    /// <summary>Takes back what has not been heard yet.</summary>
    void Cancel();

    /// <summary>Vibrates: milliseconds on, off, on…</summary>
    void Vibrate(params IReadOnlyList<int> milliseconds);

    /// <summary>Makes ready; call when a page that needs signals opens.</summary>
    Task PrepareAsync();
}
