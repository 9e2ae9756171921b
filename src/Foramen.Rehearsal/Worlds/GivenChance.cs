namespace Foramen.Rehearsal.Worlds;

/// <summary>
/// Chance that was settled beforehand by standard normal numbers, as many for each part of a world as any world may want: whoever changes one of
/// them a little gets a world that is a little different. An even number is the normal integral of its number.
/// </summary>
internal sealed class GivenChance(double[] normals) : Chance
{
    private static readonly int[] Lengths = [2, 4, 7, 3, 11, 13];
    private static readonly int[] Starts = [.. Lengths.Select((_, part) => Lengths.Take(part).Sum())];

    private int next;

    /// <summary>Numbers that settle a whole world.</summary>
    public static int Length { get; } = Lengths.Sum();

    /// <summary>Where the numbers of a part begin, and how many there are.</summary>
    public static (int Start, int Length) PlaceOf(WorldPart part) => (Starts[(int)part], Lengths[(int)part]);

    /// <inheritdoc/>
    public override double Even() => Math.Clamp(NormalIntegral.Below(normals[next++]), 0, 1 - 1e-12);

    /// <inheritdoc/>
    public override double Normal(double spread) => spread * normals[next++];

    /// <inheritdoc/>
    internal override void Begin(WorldPart part) => next = Starts[(int)part];
}
