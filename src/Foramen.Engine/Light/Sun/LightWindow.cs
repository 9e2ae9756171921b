namespace Foramen.Engine.Light;

/// <summary>A span of time worth being there.</summary>
/// <param name="Start">When it begins.</param>
/// <param name="End">When it ends; later than it begins.</param>
public readonly record struct LightWindow(DateTimeOffset Start, DateTimeOffset End)
{
    /// <summary>How long it is.</summary>
    public TimeSpan Length => End - Start;
}
