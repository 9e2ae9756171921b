namespace Foramen.Journal.Bottles;

/// <summary>Where a sheet's mean density comes from.</summary>
public enum DensitySource
{
    /// <summary>It was written down with the sheet.</summary>
    Stated,

    /// <summary>The planned tones, moved by what the judgement says.</summary>
    Judged,

    /// <summary>The planned tones.</summary>
    Predicted,

    /// <summary>Nothing is known: the density that the developer's capacity is for.</summary>
    Assumed,
}
