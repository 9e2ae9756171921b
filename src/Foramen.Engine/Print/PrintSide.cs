namespace Foramen.Engine.Print;

/// <summary>Which picture of the sheet is shown.</summary>
public enum PrintSide
{
    /// <summary>The sheet as it comes out of the bath: a negative on negative-working paper.</summary>
    AsProcessed,

    /// <summary>
    /// The picture the right way round: the sheet itself if it is a direct positive; of a negative its inversion, densities mirrored between the paper's
    /// lightest and darkest, as an inverted scan shows it. A contact print adds its own paper's curve, which is not modelled here.
    /// </summary>
    Positive,
}
