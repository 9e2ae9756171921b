using Foramen.Rehearsal.Lines;
using Foramen.Rehearsal.Worlds;

namespace Foramen.Rehearsal.Insiders;

/// <summary>A world as it might be behind a label, and how well it explains what was seen.</summary>
internal sealed class Guess
{
    private Guess(double[] normals, WorldTruth truth, double[] logs)
    {
        (Normals, Truth, Logs) = (normals, truth, logs);
        PriorLog = -normals.Sum(z => z * z) / 2;
    }

    /// <summary>The numbers that settle it; standard normal before anything was seen.</summary>
    public double[] Normals { get; }

    public WorldTruth Truth { get; }

    /// <summary>Logarithms of the chance of each sheet.</summary>
    public double[] Logs { get; }

    /// <summary>Logarithm of its density before anything was seen, up to a constant.</summary>
    public double PriorLog { get; }

    public static Guess Of(double[] normals, WorldLabel label, WorldFamily family, IReadOnlyList<(PlannedSheet Sheet, JudgedLine Judged)> past)
    {
        var truth = WorldTruth.Draw(label, family, new GivenChance(normals));
        return new Guess(normals, truth, [.. past.Select(one => SheetLikelihood.Log(truth, one.Sheet, one.Judged))]);
    }

    /// <summary>The same with one sheet more.</summary>
    public Guess After(PlannedSheet sheet, JudgedLine judged) => new(Normals, Truth, [.. Logs, SheetLikelihood.Log(Truth, sheet, judged)]);

    /// <summary>Logarithm of its density after what was seen, up to a constant, the last sheet counted in part.</summary>
    public double LogAt(double partOfLast)
    {
        var sum = PriorLog + (partOfLast * Logs[^1]);
        for (var i = 0; i < Logs.Length - 1; i++)
        {
            sum += Logs[i];
        }

        return sum;
    }
}
