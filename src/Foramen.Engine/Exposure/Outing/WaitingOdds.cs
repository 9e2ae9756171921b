using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>The odds of the light a sheet needs, opened now or waited for.</summary>
/// <param name="UnbrokenNow">That the sun, out now, stays out for as long as the exposure needs.</param>
/// <param name="UnbrokenByWaiting">That within the wait a span of sun begins, or goes on, that lasts as long as the exposure needs.</param>
/// <param name="GatheredByWaiting">That an exposure opened now and covered in every cloud is done by the end of wait and exposure together.</param>
/// <param name="MeanSun">How long a span of sun lasts, by what was seen and the prior.</param>
/// <param name="MeanCloud">The same of cloud.</param>
public sealed record WaitingOdds(
    Probability UnbrokenNow, Probability UnbrokenByWaiting, Probability GatheredByWaiting, Duration MeanSun, Duration MeanCloud);
