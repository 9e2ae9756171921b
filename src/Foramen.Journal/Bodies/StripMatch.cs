using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>The patch of a strip that best matches a grey of known density.</summary>
public sealed record StripMatch
{
    /// <summary>The patch, from 1 in order of rising exposure.</summary>
    public required int Step { get; init; }

    /// <summary>The grey's density.</summary>
    public required double Density { get; init; }

    internal void Check()
    {
        Guard.Within(Step, 1, StripMade.MostPatches, "the patch that matched");
        Guard.Within(Density, 0, 4, "the density that was matched");
    }
}
