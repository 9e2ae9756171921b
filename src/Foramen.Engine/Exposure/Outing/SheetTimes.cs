using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>How long the hands need. Immutable; the defaults are assumptions (common practice, no source).</summary>
public sealed record SheetTimes
{
    /// <summary>Setting up at a place: tripod, frame, reading. 0 to 4 h.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public Duration SetUp { get; init => field = Checked(value, "the time to set up"); } = Duration.FromMinutes(10);

    /// <summary>The flash and loading, for each sheet. 0 to 4 h.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public Duration Flash { get; init => field = Checked(value, "the time to load and flash"); } = Duration.FromMinutes(2);

    /// <summary>Developing, fixing and the first wash, for each sheet. 0 to 4 h.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public Duration Processing { get; init => field = Checked(value, "the time to process"); } = Duration.FromMinutes(10);

    private static Duration Checked(Duration value, string what)
        => Duration.FromSeconds(Guard.Within(value.Seconds, 0, 4 * 3600, what, "s"));
}
