using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>A density that was read, beside the curve.</summary>
/// <param name="Strip">Its strip, from 0.</param>
/// <param name="Time">Its time; zero for a masked or a fogged patch.</param>
/// <param name="LgExposure">lg of its effective exposure in lux seconds, the error found of its light taken out; infinite for a masked or a fogged patch.</param>
/// <param name="Density">As read.</param>
/// <param name="Fitted">On the curve.</param>
/// <param name="Trust">How far it was believed, 0 to 1.</param>
public readonly record struct FittedPatch(int Strip, Duration Time, double LgExposure, Density Density, Density Fitted, double Trust);
