using Foramen.Rehearsal.Lines;

namespace Foramen.Rehearsal.Worlds;

/// <summary>The label of a box, with its densities as they are before they are printed on it.</summary>
/// <param name="Seen">What is printed.</param>
/// <param name="Min">Density of the lightest tone.</param>
/// <param name="Net">Densities between the lightest and the darkest tone.</param>
internal sealed record WorldLabel(LabelSeen Seen, double Min, double Net)
{
    public bool IsNegative => Seen.Kind == "negative";

    /// <summary>Share of the net density at which the middle is wanted.</summary>
    public double Middle => IsNegative ? 0.60 / Net : (0.7447 - Min) / Net;

    /// <summary>Share of the net density that is just seen.</summary>
    public double FirstTone => HiddenBand.FirstTone / Net;

    public static WorldLabel Draw(Chance chance)
    {
        var negative = chance.Happens(0.5);
        var min = chance.Between(0.05, 0.10);
        var net = chance.Between(1.75, 2.05);
        var label = new LabelSeen
        {
            Kind = negative ? "negative" : "directPositive",
            ExposureIndex = Math.Round(chance.Between(3, 8), 1),
            AtSeconds = negative ? 60 : 120,
            IsoRange = Math.Round(negative ? chance.Between(95, 125) : chance.Between(80, 100)),
            DMin = Math.Round(min, 2),
            DMax = Math.Round(min + net, 2),
            FailureExponent = 0.9,
        };
        return new WorldLabel(label, min, net);
    }

    /// <summary>A label as whoever reads it must take it.</summary>
    public static WorldLabel Read(LabelSeen seen) => new(seen, seen.DMin, seen.DMax - seen.DMin);
}
