namespace Foramen.Rehearsal.Worlds;

/// <summary>Makes worlds.</summary>
public static class WorldMaker
{
    /// <summary>The world of a seed and a number.</summary>
    public static IWorld Make(long seed, int number, WorldFamily family) => new HiddenWorld(SeedOf(seed, number), family);

    /// <summary>The seed of a world; what an outside world is told.</summary>
    public static long SeedOf(long seed, int number) => (long)(new Chance(seed, number).Even() * (1L << 52));
}
