namespace Foramen.Cli.Output;

/// <summary>What is believed of one thing, in stops (failure: stops a doubling; ageing: stops for ten sheets).</summary>
internal sealed record BeliefReport(string Kind, string Of, double Mean, double Spread, double PriorSpread);
