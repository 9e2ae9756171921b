namespace Foramen.Engine.Paper;

/// <summary>A density that was read, as the fit takes it in.</summary>
/// <param name="Strip">Whose light it got.</param>
/// <param name="LgExposure">lg of its effective exposure by the assumed failure; infinite for a masked or a fogged patch.</param>
/// <param name="FailureLoad">How much of the failure's correction it bears: lg t beyond a second.</param>
/// <param name="Density">As read.</param>
/// <param name="Spread">Standard deviation of the reading.</param>
/// <param name="LgSpread">Standard deviation of its own lg exposure.</param>
internal readonly record struct PatchRow(int Strip, double LgExposure, double FailureLoad, double Density, double Spread, double LgSpread);
