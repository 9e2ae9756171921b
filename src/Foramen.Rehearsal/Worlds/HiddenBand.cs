namespace Foramen.Rehearsal.Worlds;

/// <summary>Where a tone must land on the true curve, in stops: where it is a keeper, where it was wanted, and where its detail is gone.</summary>
internal readonly record struct HiddenBand(double Low, double Aim, double High)
{
    /// <summary>Net density that is just seen.</summary>
    public const double FirstTone = 0.04;

    /// <summary>The band of a rendering; null where the tone may do what it likes. Shares of net density as ADR 0004 defines a keeper.</summary>
    public static HiddenBand? Of(HiddenCurve curve, string rendering, bool negative, double min, double net)
    {
        (double Less, double Aim, double More)? shares = (rendering, negative) switch
        {
            ("openShadow", true) => (FirstTone / net, 0.10, 0.35),
            ("openShadow", false) => (0.93, 0.80, 0.50),
            ("mid", true) => (0.14, 0.60 / net, 0.55),
            ("mid", false) => (0.60, (0.7447 - min) / net, 0.18),
            ("texturedHighlight", true) => (0.50, 0.78, 0.92),
            ("texturedHighlight", false) => (0.26, 0.10, FirstTone / net),
            _ => null,
        };
        return shares is { } s ? new HiddenBand(curve.StopsFor(s.Less), curve.StopsFor(s.Aim), curve.StopsFor(s.More)) : null;
    }
}
