namespace Foramen.Rehearsal.Worlds;

/// <summary>What a time is worth, in stops over one second, by a law that is not the Engine's.</summary>
internal sealed class HiddenFailure
{
    private readonly Func<double, double> loss;

    private HiddenFailure(Func<double, double> loss) => this.loss = loss;

    public static HiddenFailure Draw(FailureFamily family, Chance chance)
    {
        // Losses of some 0.4 to 1.2 stops at a minute, as an exponent of 0.93 to 0.8 would give.
        var atMinute = chance.Between(0.35, 1.2);
        const double Minute = 5.907;
        switch (family)
        {
            case FailureFamily.Catenary:
                var width = chance.Between(2, 5);
                var height = atMinute / (Math.Sqrt(1 + (Minute * Minute / (width * width))) - 1);
                return new HiddenFailure(x => height * (Math.Sqrt(1 + (x * x / (width * width))) - 1));
            case FailureFamily.Quadratic:
                return new HiddenFailure(x => atMinute * x * x / (Minute * Minute));
            case FailureFamily.Additive:
                var power = chance.Between(1.25, 1.6);
                var metered = 60 * Math.Pow(2, -atMinute);
                var extra = (60 - metered) / Math.Pow(metered, power);
                return new HiddenFailure(x => x - Math.Log2(Metered(Math.Pow(2, x), extra, power)));
            default:
                var bend = chance.Between(3, 5);
                var slope = chance.Between(0.15, 0.32);
                return new HiddenFailure(x => slope * Math.Max(0, x - bend));
        }
    }

    public double StopsOf(double seconds)
    {
        var x = Math.Log2(seconds);
        return x <= 0 ? x : x - loss(x);
    }

    private static double Metered(double seconds, double extra, double power)
    {
        var (low, high) = (0.0, seconds);
        for (var i = 0; i < 50; i++)
        {
            var at = (low + high) / 2;
            (low, high) = at + (extra * Math.Pow(at, power)) < seconds ? (at, high) : (low, at);
        }

        return (low + high) / 2;
    }
}
