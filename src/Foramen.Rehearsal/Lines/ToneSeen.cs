namespace Foramen.Rehearsal.Lines;

/// <summary>A tone as it is metered.</summary>
public sealed record ToneSeen
{
    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary><c>openShadow</c>, <c>mid</c>, <c>texturedHighlight</c>, <c>mayBurn</c> or <c>mayBlock</c>.</summary>
    public required string Rendering { get; init; }

    /// <summary>The meter's reading, EV at ISO 100 (K 12.5).</summary>
    public required double Ev { get; init; }
}
