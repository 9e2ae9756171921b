namespace Foramen.Rehearsal;

/// <summary>Parts of a world's truth, in the order they are drawn in.</summary>
internal enum WorldPart
{
    Curve,
    Failure,
    Clouds,
    Chemistry,
    Biases,
    Skies,
}
