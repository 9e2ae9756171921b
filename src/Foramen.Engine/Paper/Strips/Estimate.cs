namespace Foramen.Engine.Paper;

/// <summary>A fitted value with the interval that holds the truth nine times in ten, as far as the model and the stated spreads are right.</summary>
/// <param name="Value">Best guess.</param>
/// <param name="Low">Lower end of the 90 % interval.</param>
/// <param name="High">Upper end.</param>
public readonly record struct Estimate(double Value, double Low, double High);
