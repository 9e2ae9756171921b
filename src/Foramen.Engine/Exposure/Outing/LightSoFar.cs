using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>How long suns and clouds have lasted today, each from its beginning to its end, and what there is now. Immutable.</summary>
/// <param name="Suns">Finished spans of sun.</param>
/// <param name="Clouds">Finished spans of cloud.</param>
/// <param name="SunNow">Whether the sun is out.</param>
/// <param name="NowFor">How long that has lasted.</param>
public sealed record LightSoFar(IReadOnlyList<Duration> Suns, IReadOnlyList<Duration> Clouds, bool SunNow, Duration NowFor);
