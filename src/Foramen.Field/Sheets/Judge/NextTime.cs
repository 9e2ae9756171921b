using Foramen.Engine.Paper;

namespace Foramen.Field.Sheets.Judge;

/// <summary>
/// What a judgement means for the next sheet in the same light: all tones move together with the time, so the time is changed by the mean of what
/// they were off by. With Schwarzschild's law t_new = t_old·2^(−e/p); with any other law its own inverse.
/// </summary>
/// <remarks>Limit: one sheet says nothing about what else may have been wrong (reading, processing); the flash is taken to stay the same.</remarks>
public sealed record NextTime
{
    private NextTime()
    {
    }

    /// <summary>The time that this sheet was given, as time in the metered light, s.</summary>
    public required double OldSeconds { get; init; }

    /// <summary>The time for the next sheet in that light, s.</summary>
    public required double NewSeconds { get; init; }

    /// <summary>How much lighter than wanted the picture came out, stops of light; negative is darker.</summary>
    public required double LighterByStops { get; init; }

    /// <summary>How far the tones lie apart, stops: what no time can right.</summary>
    public required double ApartStops { get; init; }

    /// <summary>Whether a tone lost its detail, so that it was off by at least what was said.</summary>
    public required bool IsBound { get; init; }

    /// <summary>Reads it off the tones.</summary>
    /// <param name="law">The paper's failure.</param>
    /// <param name="oldSeconds">Time given, as time in the metered light, s, above zero.</param>
    /// <param name="tones">What counts of the judgement; at least one.</param>
    public static NextTime From(FailureLaw law, double oldSeconds, IReadOnlyList<ToneVerdict> tones)
    {
        var off = tones.Average(tone => tone.LighterByStops);
        return new NextTime
        {
            OldSeconds = oldSeconds,
            NewSeconds = law.SecondsNeeded(law.MeteredSecondsFor(oldSeconds) * Math.Pow(2, -off)),
            LighterByStops = off,
            ApartStops = tones.Max(tone => tone.LighterByStops) - tones.Min(tone => tone.LighterByStops),
            IsBound = tones.Any(tone => tone.Lost is not null),
        };
    }
}
