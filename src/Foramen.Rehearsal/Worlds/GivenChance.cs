namespace Foramen.Rehearsal.Worlds;

/// <summary>
/// Chance that was settled beforehand by standard normal numbers, as many for each part of a world as any world may want: whoever changes one of
/// them a little gets a world that is a little different. An even number is the normal integral of its number.
/// </summary>
internal sealed class GivenChance(double[] normals) : Chance
{
    /// <summary>Numbers kept for each part.</summary>
    public const int PartLength = 16;

    /// <summary>Numbers that settle a whole world.</summary>
    public const int Length = PartLength * ((int)WorldPart.Skies + 1);

    private int next;

    /// <inheritdoc/>
    public override double Even() => Math.Clamp(NormalIntegral.Below(normals[next++]), 0, 1 - 1e-12);

    /// <inheritdoc/>
    public override double Normal(double spread) => spread * normals[next++];

    /// <inheritdoc/>
    internal override void Begin(WorldPart part) => next = PartLength * (int)part;
}
