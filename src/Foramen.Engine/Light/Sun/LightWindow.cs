namespace Foramen.Engine.Light;

/// <summary>A span of time worth being there.</summary>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends; later than it begins.</param>
public readonly record struct LightWindow(DateTimeOffset Start, DateTimeOffset End)
{
    /// <summary>How long it is.</summary>
    public TimeSpan Length => End - Start;

    /// <summary>Whether an instant lies in it.</summary>
    public bool Holds(DateTimeOffset instant) => instant >= Start && instant <= End;

    /// <summary>What two have in common; null for nothing.</summary>
    public LightWindow? With(LightWindow other)
    {
        var (start, end) = (Start > other.Start ? Start : other.Start, End < other.End ? End : other.End);
        return end > start ? new LightWindow(start, end) : null;
    }
}
