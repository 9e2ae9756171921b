namespace Foramen.Rehearsal.Worlds;

/// <summary>A sheet's own scatter: what nobody knows beforehand.</summary>
/// <param name="Light">Light during the exposure against that at metering, stops, as a function of the time.</param>
/// <param name="Sheet">The sheet as a whole, stops.</param>
/// <param name="Flash">The flash alone, stops.</param>
internal sealed record HiddenScatter(Func<double, double> Light, double Sheet, double Flash);
