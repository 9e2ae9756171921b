namespace Foramen.Rehearsal.Lines;

/// <summary>World to photographer: the sheet as it came out.</summary>
public sealed record JudgedLine : RehearsalLine
{
    /// <summary>Worth keeping.</summary>
    public required bool Keeper { get; init; }

    /// <summary>Tone by tone.</summary>
    public required IReadOnlyList<ToneJudged> Tones { get; init; }

    /// <summary>What went wrong, as far as the photographer noticed: <c>frame</c>, <c>motion</c>, <c>light</c>, <c>process</c>, <c>leak</c>, <c>other</c>.</summary>
    public IReadOnlyList<string> Causes { get; init; } = [];
}
