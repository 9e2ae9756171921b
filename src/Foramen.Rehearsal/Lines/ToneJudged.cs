namespace Foramen.Rehearsal.Lines;

/// <summary>How a tone came out, as judged by eye.</summary>
public sealed record ToneJudged
{
    /// <summary>Which tone.</summary>
    public required string Name { get; init; }

    /// <summary>How much lighter than wanted, stops of light; negative is darker. Where it is lost, at least so much (in size).</summary>
    public required double LighterByStops { get; init; }

    /// <summary><c>burnt</c> or <c>blocked</c> where no detail is left; null otherwise.</summary>
    public string? Lost { get; init; }
}
