using CsCheck;
using Foramen.Engine.Light;

namespace Foramen.Engine.Tests.Light;

/// <summary>Instants and places to try.</summary>
internal static class Skies
{
    /// <summary>The invented canal basin, in flat country a little below the sea.</summary>
    public static GeographicPosition Basin { get; } = GeographicPosition.FromDegrees(52.3, 5.1, -2);

    public static IReadOnlyList<SkyCover> Covers { get; } = [SkyCover.Clear, SkyCover.Hazy, SkyCover.Overcast];

    public static Gen<DateTimeOffset> GenInstant { get; } = Gen.Long[0, 100L * 365 * 86400]
        .Select(seconds => new DateTimeOffset(1950, 1, 5, 0, 0, 0, TimeSpan.Zero).AddSeconds(seconds));

    public static Gen<GeographicPosition> GenPlace { get; } = Gen.Select(Gen.Double[-90, 90], Gen.Double[-180, 180], Gen.Double[-400, 5000])
        .Select((latitude, longitude, height) => GeographicPosition.FromDegrees(latitude, longitude, height));
}
