namespace Foramen.Engine.Print;

/// <summary>What a mask's shape does to the light.</summary>
public enum MaskSense
{
    /// <summary>The shape holds light back: a letter or a silhouette laid on clear film.</summary>
    Blocks,

    /// <summary>The shape lets light through and what is around it holds it back: a window cut out of card.</summary>
    Passes,
}
