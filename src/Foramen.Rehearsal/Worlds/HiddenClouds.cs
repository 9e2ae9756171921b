namespace Foramen.Rehearsal.Worlds;

/// <summary>
/// Light over time. Each sheet meets a sky in some state; the meter sees that state, and the exposure what follows. Given the state, what follows is the
/// sheet's own scatter: the oracle knows its distribution and not its course.
/// </summary>
internal sealed class HiddenClouds
{
    private const int Pieces = 12;

    private readonly CloudFamily family;
    private readonly double memorySeconds;
    private readonly double depth;
    private readonly double sunSeconds;
    private readonly double cloudSeconds;
    private readonly double ramp;
    private readonly double strength;

    public HiddenClouds(CloudFamily family, Chance chance)
    {
        this.family = family;
        memorySeconds = chance.Between(120, 900);
        depth = chance.Between(0.8, 2);
        sunSeconds = chance.Between(120, 600);
        cloudSeconds = chance.Between(30, 150);
        ramp = chance.Between(-0.25, 0.05);
        strength = chance.Between(0.7, 1.3);
    }

    /// <summary>The state a sheet meets, in stops from the sky's average.</summary>
    public double Meet(double restlessness, Chance chance) => family switch
    {
        CloudFamily.Wandering => chance.Normal(strength * restlessness),
        CloudFamily.SunAndCloud => restlessness > 0.3 && chance.Happens(cloudSeconds / (sunSeconds + cloudSeconds)) ? -depth : chance.Normal(0.05),
        _ => chance.Normal(0.1),
    };

    /// <summary>The sky as anyone sees it: where sun and cloud take turns, whether the sun is out.</summary>
    public string Seen(SkyTruth sky, double state)
        => family != CloudFamily.SunAndCloud || sky.Restless <= 0.3 ? sky.Name : sky.Name + (state < -0.5 ? ", sun hidden" : ", sun out");

    /// <summary>The mean light of an exposure against that at metering, stops.</summary>
    public double After(double state, double restlessness, double seconds, Chance chance)
    {
        var sum = 0.0;
        var step = seconds / Pieces;
        switch (family)
        {
            case CloudFamily.Wandering:
                var spread = strength * restlessness;
                var now = state;
                var keep = Math.Exp(-step / memorySeconds);
                now = (now * Math.Exp(-30 / memorySeconds)) + chance.Normal(spread * Math.Sqrt(1 - Math.Exp(-60 / memorySeconds)));
                for (var i = 0; i < Pieces; i++)
                {
                    now = (keep * now) + chance.Normal(spread * Math.Sqrt(1 - (keep * keep)));
                    sum += Math.Pow(2, now - state);
                }

                break;
            case CloudFamily.SunAndCloud:
                var cloudy = state < -0.5;
                var (at, light) = (0.0, 0.0);
                while (at < seconds)
                {
                    var mean = restlessness > 0.3 ? (cloudy ? cloudSeconds : sunSeconds) : 1e6;
                    var until = Math.Min(seconds, at - (mean * Math.Log(1 - chance.Even())));
                    light += (until - at) * Math.Pow(2, (cloudy ? -depth : 0) - (state < -0.5 ? -depth : 0));
                    (at, cloudy) = (until, !cloudy);
                }

                sum = Pieces * light / seconds;
                sum *= Math.Pow(2, chance.Normal(0.06));
                break;
            default:
                var dip = restlessness > 0.3 && chance.Happens(0.3) ? chance.Between(0.1, 0.5) : 0;
                sum = Pieces * Math.Pow(2, ramp * seconds / 600) * (1 - (dip * (1 - Math.Pow(2, -depth)))) * Math.Pow(2, chance.Normal(0.25 * restlessness));
                break;
        }

        return Math.Log2(sum / Pieces);
    }
}
