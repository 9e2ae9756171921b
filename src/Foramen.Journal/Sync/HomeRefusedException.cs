namespace Foramen.Journal.Sync;

/// <summary>A meeting with Home ended early.</summary>
/// <param name="why">Why.</param>
/// <param name="sentence">The same in one sentence.</param>
/// <param name="line">For <see cref="HomeRefusal.BadEntry"/>: which entry of the batch, from 0.</param>
/// <param name="cause">What was behind it.</param>
public sealed class HomeRefusedException(HomeRefusal why, string sentence, int? line = null, Exception? cause = null) : Exception(sentence, cause)
{
    /// <summary>Why.</summary>
    public HomeRefusal Why { get; } = why;

    /// <summary>Which entry of the batch, from 0; null where it is about none.</summary>
    public int? Line { get; } = line;
}
