using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>When something moved and when it stood during an exposure. Immutable.</summary>
public sealed class MotionCourse
{
    private MotionCourse(IReadOnlyList<MotionSpell> spells) => Spells = spells;

    /// <summary>In order; their worths sum to 1.</summary>
    public IReadOnlyList<MotionSpell> Spells { get; }

    /// <summary>All of them together, by the clock.</summary>
    public Duration Exposure => Duration.FromSeconds(Spells.Sum(spell => spell.Time.Seconds));

    /// <summary>By the clock, how long it moves.</summary>
    public Duration Moving => Duration.FromSeconds(Spells.Sum(spell => spell.Moves ? spell.Time.Seconds : 0));

    /// <summary>Part of the light that falls while it moves, 0 to 1.</summary>
    public double MovingShare => Spells.Sum(spell => spell.Moves ? spell.Worth : 0);

    /// <summary>It moves in the middle of an exposure in even light, and stands before and after.</summary>
    /// <param name="exposure">More than nothing.</param>
    /// <param name="from">Part of the exposure after which it begins, 0 to 1.</param>
    /// <param name="to">Part of the exposure after which it stops; not before it begins.</param>
    /// <exception cref="RefusalException">Outside a range.</exception>
    public static MotionCourse Between(Duration exposure, double from, double to)
    {
        var seconds = Guard.Within(exposure.Seconds, 1e-3, Duration.Max, "the exposure", "s");
        Guard.Within(from, 0, 1, "the part of the exposure after which it begins to move");
        Guard.Within(to, from, 1, "the part of the exposure after which it stops moving");
        MotionSpell Spell(double part, bool moves) => new(Duration.FromSeconds(part * seconds), part, moves);
        return Of([Spell(from, false), Spell(to - from, true), Spell(1 - to, false)]);
    }

    /// <summary>A course as it was.</summary>
    /// <param name="spells">In order; empty ones are left out.</param>
    /// <exception cref="RefusalException">No spell that any light fell in, or a worth that is no number of zero or more.</exception>
    public static MotionCourse Of(IEnumerable<MotionSpell> spells)
    {
        var kept = spells.Where(spell => spell.Time.Seconds > 0).ToList();
        foreach (var spell in kept)
        {
            Guard.Within(spell.Worth, 0, 1e12, "the worth of a spell of an exposure");
        }

        var sum = kept.Sum(spell => spell.Worth);
        Guard.Within(sum, 1e-12, 1e15, "the worth of an exposure’s light");
        return new MotionCourse([.. kept.Select(spell => spell with { Worth = spell.Worth / sum })]);
    }
}
