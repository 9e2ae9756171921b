namespace Foramen.Rehearsal.Worlds;

/// <summary>Shapes of hidden curves. The Engine's own, the logistic, is not among them.</summary>
internal enum CurveFamily
{
    Gompertz,
    Weibull,
    Probit,
    Straight,
    TwoEmulsions,
}
