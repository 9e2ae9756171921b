using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>From a sheet that was made to evidence.</summary>
public static class SheetEvidence
{
    /// <summary>More scatter for a sheet of which its maker says that light or processing went wrong: it says less of everything else (an assumption).</summary>
    public static Stops Upset { get; } = Stops.FromValue(1);

    /// <summary>The evidence of a sheet.</summary>
    /// <param name="id">The entry it comes from.</param>
    /// <param name="kind">Judged or measured.</param>
    /// <param name="at">When.</param>
    /// <param name="basis">The scene as labelled.</param>
    /// <param name="given">The time given, as time in the metered light.</param>
    /// <param name="tones">Its tones.</param>
    /// <param name="kept">Whether it was kept for its tones; null where something else spoilt it or it was not said.</param>
    /// <param name="upset">Whether its maker says that light or processing went wrong.</param>
    public static Evidence Of(
        string id, EvidenceKind kind, DateTimeOffset at, PlanBasis basis, Duration given, IReadOnlyList<ToneEvidence> tones, bool? kept, bool upset)
    {
        return new Evidence
        {
            Id = id,
            Kind = kind,
            At = at,
            Box = basis.Conditions.Box,
            Camera = basis.Conditions.Camera,
            Sky = basis.Conditions.Sky,
            Metered = basis.Conditions.Metered,
            SheetsInBottle = basis.Conditions.SheetsInBottle,
            LabelSpread = basis.Conditions.LabelSpread,
            FailureSpread = basis.Conditions.FailureSpread,
            Doublings = basis.Paper.DoublingsTo(given),
            Scatter = upset ? Stops.RootSumSquare(basis.Scatter, Upset) : basis.Scatter,
            Kept = kept,
            Tones = tones,
        };
    }
}
