namespace Foramen.Rehearsal;

/// <summary>
/// Chance that is the same on every machine and in every version: SplitMix64 (Steele, Lea and Flood, OOPSLA 2014) on a seed made of numbers, so that
/// each world, and each sheet in it, draws from its own stream whatever was drawn elsewhere.
/// </summary>
public class Chance
{
    private ulong state;

    /// <summary>The stream of these numbers.</summary>
    public Chance(params ReadOnlySpan<long> seeds)
    {
        foreach (var seed in seeds)
        {
            state = Mix(state + (ulong)seed + 0x9E3779B97F4A7C15);
        }
    }

    /// <summary>Evenly from 0 to 1, without 1.</summary>
    public virtual double Even()
    {
        state += 0x9E3779B97F4A7C15;
        return (Mix(state) >> 11) * (1.0 / (1UL << 53));
    }

    /// <summary>Evenly between two numbers.</summary>
    public double Between(double low, double high) => low + ((high - low) * Even());

    /// <summary>One of the first numbers from 0.</summary>
    public int Below(int count) => (int)(Even() * count);

    /// <summary>Whether something of this probability happens.</summary>
    public bool Happens(double probability) => Even() < probability;

    /// <summary>A normal number of mean zero (Box and Muller, Ann. Math. Stat. 29, 610, 1958).</summary>
    public virtual double Normal(double spread) => spread * Math.Sqrt(-2 * Math.Log(1 - Even())) * Math.Cos(2 * Math.PI * Even());

    /// <summary>Says that another part of a whole is drawn from here on. Where chance is a stream it just goes on.</summary>
    internal virtual void Begin(WorldPart part)
    {
    }

    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
