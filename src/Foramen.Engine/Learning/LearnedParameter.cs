using Foramen.Engine.Bath;

namespace Foramen.Engine.Learning;

/// <summary>One parameter of a developer.</summary>
/// <param name="Parameter">Which.</param>
/// <param name="Before">Handbook's, common practice's or as the user said.</param>
/// <param name="Value">Median, with the ends of the 90 % interval.</param>
/// <param name="IsAssumed">Whether the data leave more than nine tenths of the first uncertainty: then the starting value goes on being used.</param>
/// <param name="Moved">From <paramref name="Before"/>, in standard deviations of the first uncertainty.</param>
public sealed record LearnedParameter(DeveloperParameter Parameter, double Before, Spread<double> Value, bool IsAssumed, double Moved);
