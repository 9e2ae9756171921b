using Foramen.Rehearsal.Worlds;

namespace Foramen.Rehearsal.Insiders;

/// <summary>The light of an exposure against that at metering, as far as anyone knows it who knows which kind of clouds there are and not their rhythm.</summary>
/// <param name="Mean">Mean, stops.</param>
/// <param name="Spread">Standard deviation, stops.</param>
internal sealed record LightCourse(double Mean, double Spread)
{
    private const int Draws = 300;

    /// <summary>By trying skies of that kind.</summary>
    /// <returns>Null where such clouds cannot look like that.</returns>
    public static LightCourse? Of(CloudFamily family, int sky, string seen, double seconds)
    {
        var kind = SkyTruth.All[sky];
        var (count, sum, squares) = (0, 0.0, 0.0);
        for (var draw = 0; draw < Draws; draw++)
        {
            var chance = new Chance(1, draw);
            var clouds = new HiddenClouds(family, chance);
            var state = clouds.Meet(kind.Restless, chance);
            if (clouds.Seen(kind, state) == seen)
            {
                var light = clouds.After(state, kind.Restless, seconds, chance);
                (count, sum, squares) = (count + 1, sum + light, squares + (light * light));
            }
        }

        return count == 0 ? null : new LightCourse(sum / count, Math.Sqrt(Math.Max(1e-4, (squares / count) - (sum * sum / count / count))));
    }
}
