using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>A strip was read, by densities, by eye or both. Said again of the same strip, the last counts.</summary>
public sealed record StripRead() : StripBody(EntryKind.StripRead)
{
    /// <summary>How its densities were read.</summary>
    public required StripReader By { get; init; }

    /// <summary>Density of each patch, in order of rising exposure; null for one that was not read.</summary>
    public IReadOnlyList<double?>? Densities { get; init; }

    /// <summary>Standard deviation of a density; by how it was read where missing.</summary>
    public double? DensitySd { get; init; }

    /// <summary>Density of a patch that saw no light.</summary>
    public double? MaskedDensity { get; init; }

    /// <summary>Density of a patch that got so much light that more would change nothing.</summary>
    public double? FoggedDensity { get; init; }

    /// <summary>The first patch that differs visibly from unexposed paper, from 1; one more than there are where none does.</summary>
    public int? FirstTone { get; init; }

    /// <summary>The last patch that can be told from the next.</summary>
    public int? LastTone { get; init; }

    /// <summary>The patch that matched a known grey.</summary>
    public StripMatch? Match { get; init; }

    /// <summary>Anything else worth remembering.</summary>
    public string? Note { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        Guard.Within(Densities?.Count ?? 0, 0, StripMade.MostPatches, "the number of densities");
        foreach (var density in Densities ?? [])
        {
            BodyCheck.Optional(density, 0, 4, "the density of a patch");
        }

        BodyCheck.Optional(DensitySd, 0.001, 0.5, "the spread of a density");
        BodyCheck.Optional(MaskedDensity, 0, 4, "the density of the masked patch");
        BodyCheck.Optional(FoggedDensity, 0, 4, "the density of the fogged patch");
        BodyCheck.Optional(FirstTone, 1, StripMade.MostPatches + 1, "the patch of the first tone");
        BodyCheck.Optional(LastTone, 1, StripMade.MostPatches, "the patch of the last tone");
        Match?.Check();
        BodyCheck.Note(Note);
    }
}
