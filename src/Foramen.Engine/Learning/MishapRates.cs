using Foramen.Engine.Quantities;

namespace Foramen.Engine.Learning;

/// <summary>
/// How often frame, motion and processing spoil a sheet: for each a beta distribution, updated by the sheets that were and were not spoilt (conjugate,
/// so order does not matter). Before any sheet: frame 1 in 20, motion 1 in 25, process 1 in 50, each as if from twenty sheets (assumptions).
/// </summary>
public sealed record MishapRates
{
    private const double PriorSheets = 20;

    // Even a frame that cannot fit may be kept; and what is never, no share of the odds can be given of.
    private const double MostOften = 0.99;

    private MishapRates(double sheets, double frame, double motion, double process)
    {
        Sheets = sheets;
        Frame = Rate(frame, 0.05);
        Motion = Rate(motion, 0.04);
        Process = Rate(process, 0.02);

        Probability Rate(double lost, double prior) => Probability.FromFraction((lost + (prior * PriorSheets)) / (sheets + PriorSheets));
    }

    /// <summary>Sheets seen.</summary>
    public double Sheets { get; }

    /// <summary>Probability that the frame spoils the next one.</summary>
    public Probability Frame { get; private init; }

    /// <summary>Probability that something moves.</summary>
    public Probability Motion { get; }

    /// <summary>Probability that processing spoils it, beyond what it does to the tones.</summary>
    public Probability Process { get; }

    /// <summary>Probability that none of them does.</summary>
    public Probability NoMishap => Probability.FromFraction((1 - Frame.Fraction) * (1 - Motion.Fraction) * (1 - Process.Fraction));

    /// <summary>These rates for a frame of which it is known how closely it was chosen.</summary>
    /// <param name="chanceOfCut">Probability that it cuts the subject, as by <see cref="AimingBelief.ChanceOfCut"/>.</param>
    public MishapRates ForFrame(Probability chanceOfCut) => this with { Frame = Probability.FromFraction(Math.Min(MostOften, chanceOfCut.Fraction)) };

    /// <summary>The rates after these sheets, each with what spoilt it.</summary>
    public static MishapRates From(IEnumerable<IReadOnlyCollection<SheetLoss>> sheets)
    {
        var (count, frame, motion, process) = (0.0, 0.0, 0.0, 0.0);
        foreach (var sheet in sheets)
        {
            count++;
            frame += sheet.Contains(SheetLoss.Frame) ? 1 : 0;
            motion += sheet.Contains(SheetLoss.Motion) ? 1 : 0;
            process += sheet.Contains(SheetLoss.Process) ? 1 : 0;
        }

        return new MishapRates(count, frame, motion, process);
    }
}
