namespace Foramen.Cli.Output;

/// <summary>One stretch of light, and what the card does after it.</summary>
/// <param name="FromSeconds">When it begins, counting light only.</param>
/// <param name="LightSeconds">How long it is.</param>
/// <param name="Then">What to do after it.</param>
internal sealed record StripMoveReport(double FromSeconds, double LightSeconds, string Then);
