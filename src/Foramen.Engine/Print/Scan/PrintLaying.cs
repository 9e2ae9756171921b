using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>
/// The work of laying a print over its prediction, stage by stage, so that a page can show how far it is, and stop: each way it may lie on a small grid, the best of them
/// on a finer one, the print read, and the two compared. Not for several threads at once.
/// </summary>
public sealed class PrintLaying
{
    private const int Coarse = 60;
    private const int Fine = 240;

    // A pixel of the coarse grid is four of the fine one, and the parabola goes between them.
    private const int FineReach = 3;
    private const double FarthestShift = 0.1;
    private const double LeastAgreement = 0.35;
    private const double Square = 1.15;

    private readonly PrintSetting setting;
    private readonly CharacteristicCurve curve;
    private readonly PredictedPrint predicted;
    private readonly DensityPlane wanted;
    private readonly double rimPart;
    private readonly PrintLie[] lies;
    private (PrintLie Lie, Laid Laid) best;
    private ScannedPrint? print;

    private PrintLaying(PrintSetting setting, CharacteristicCurve curve, PredictedPrint predicted)
    {
        (this.setting, this.curve, this.predicted) = (setting, curve, predicted);
        wanted = new DensityPlane(predicted.Width, predicted.Height, predicted.Densities());
        rimPart = predicted.BorderPixels / (double)Math.Max(predicted.Width, predicted.Height);
        lies = Lies(setting, predicted);
        best = (default, new Laid(double.NegativeInfinity, 0, 0, 0));
    }

    /// <summary>Stages in all.</summary>
    public int Stages => lies.Length + 3;

    /// <summary>Stages done.</summary>
    public int Done { get; private set; }

    /// <summary>Begins; the parameters are those of <see cref="PrintComparison.Of"/>.</summary>
    /// <param name="setting">The print on its scan.</param>
    /// <param name="image">The light that was expected on the sheet.</param>
    /// <param name="curve">The paper's curve.</param>
    /// <param name="exposure">What it was given.</param>
    /// <param name="rim">Width of the rim where the sheet was held and no light fell.</param>
    public static PrintLaying Begin(PrintSetting setting, SheetImage image, CharacteristicCurve curve, PrintExposure exposure, Length rim)
        => new(setting, curve, PredictedPrint.Expose(image, curve, exposure, new PrintLook { Side = PrintSide.AsProcessed, Border = rim }));

    /// <summary>Does the next stage.</summary>
    /// <param name="cancellation">Stops it within a stage.</param>
    /// <returns>The comparison after the last stage; null before.</returns>
    /// <exception cref="RefusalException">The print does not look like the prediction in any way it may lie.</exception>
    public PrintComparison? Step(CancellationToken cancellation = default)
    {
        var stage = Done;
        PrintComparison? comparison = null;
        if (stage < lies.Length)
        {
            Try(lies[stage], cancellation);
        }
        else if (stage == lies.Length)
        {
            Refine(cancellation);
        }
        else if (stage == lies.Length + 1)
        {
            print = ScannedPrint.Read(setting, best.Lie, predicted.Width, predicted.Height, cancellation);
        }
        else
        {
            comparison = Compare();
        }

        Done = Math.Min(stage + 1, Stages);
        return comparison;
    }

    private void Try(PrintLie lie, CancellationToken cancellation)
    {
        var laid = Laid.Over(wanted, setting, lie, Coarse, rimPart, default, FarthestShift * Coarse, cancellation);
        best = laid.Agreement > best.Laid.Agreement ? (lie, laid) : best;
    }

    private void Refine(CancellationToken cancellation)
    {
        best = (best.Lie, Laid.Over(wanted, setting, best.Lie, Fine, rimPart, best.Laid, FineReach, cancellation));
        if (best.Laid.Agreement < LeastAgreement)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"The print on this picture does not look like the one expected of this sheet (agreement {Math.Max(0, best.Laid.Agreement):0.00} of 1); choose the picture of this sheet, or check its frame and its corners."));
        }
    }

    private PrintComparison Compare()
    {
        var scale = Math.Max(predicted.Width, predicted.Height) / (double)Fine;
        var (right, down) = (best.Laid.Right * scale, best.Laid.Down * scale);
        var exposures = new PrintExposures(print!, wanted, new LgExposureOfDensity(curve), predicted.BorderPixels, right, down);
        return new PrintComparison(best.Lie, best.Laid.Agreement, right * predicted.PitchMillimetres, -down * predicted.PitchMillimetres, print!, exposures.StopsOff())
        {
            MillimetresPerPixel = predicted.PitchMillimetres,
            Sharpness = PrintSharpness.Of(exposures, predicted.PitchMillimetres),
        };
    }

    // Both mirrored and not: some scan the sheet, some the print made from it, and some programs turn it over.
    private static PrintLie[] Lies(PrintSetting setting, PredictedPrint predicted)
    {
        var shape = predicted.Width / (double)predicted.Height;
        var lies = setting.Corners.WidthOverHeight;
        var isSquare = shape is < Square and > 1 / Square;
        bool MayLie(int quarters) => isSquare || (quarters % 2 == 0 ? lies : 1 / lies) > 1 == shape > 1;
        return [.. Enumerable.Range(0, 4).Where(MayLie).SelectMany(quarters => new[] { new PrintLie(quarters, true), new PrintLie(quarters, false) })];
    }

    private readonly record struct Laid(double Agreement, double Right, double Down, int LongSide)
    {
        // Searches all whole shifts about a first guess, and then between them by the parabola through the best and its neighbours.
        public static Laid Over(
            DensityPlane wanted, PrintSetting setting, PrintLie lie, int longSide, double rimPart, Laid guess, double reach, CancellationToken cancellation)
        {
            var factor = longSide / (double)Math.Max(wanted.Width, wanted.Height);
            var (width, height) = (Math.Max(8, (int)Math.Round(wanted.Width * factor)), Math.Max(8, (int)Math.Round(wanted.Height * factor)));
            var small = wanted.Reduced(width, height);
            var print = ScannedPrint.Read(setting, lie, width, height, cancellation);
            var real = new DensityPlane(width, height, print.Densities());
            var rim = rimPart > 0 ? (int)Math.Ceiling(rimPart * longSide) + 1 : 0;
            var (middleX, middleY) = guess.LongSide == 0 ? (0, 0) : ((int)Math.Round(guess.Right * longSide / guess.LongSide), (int)Math.Round(guess.Down * longSide / guess.LongSide));
            var best = (Agreement: -1.0, X: middleX, Y: middleY);
            for (var y = -(int)reach; y <= (int)reach; y++)
            {
                cancellation.ThrowIfCancellationRequested();
                for (var x = -(int)reach; x <= (int)reach; x++)
                {
                    if (small.LikenessTo(real, rim, middleX + x, middleY + y) is { } likeness && likeness > best.Agreement)
                    {
                        best = (likeness, middleX + x, middleY + y);
                    }
                }
            }

            double At(int x, int y) => small.LikenessTo(real, rim, best.X + x, best.Y + y) ?? best.Agreement;
            return new Laid(
                best.Agreement, best.X + Between(At(-1, 0), best.Agreement, At(1, 0)), best.Y + Between(At(0, -1), best.Agreement, At(0, 1)), longSide);
        }

        private static double Between(double before, double at, double after)
        {
            var bend = before - (2 * at) + after;
            return bend < 0 ? Math.Clamp(0.5 * (before - after) / bend, -0.5, 0.5) : 0;
        }
    }
}
