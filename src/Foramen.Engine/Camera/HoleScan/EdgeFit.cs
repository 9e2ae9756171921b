using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>A hole's edge fitted to the pixels along it, with its noise and what is left over in each direction.</summary>
internal sealed record EdgeFit
{
    private const int MostSteps = 40;
    private const double HuberScale = 1.5;

    // Of the cost, about half a unit for each of up to 30 000 pixels: what is left to gain is less than a tenth of a standard deviation of any unknown.
    private const double Enough = 1e-7;

    /// <summary>The edge.</summary>
    public required EdgeModel Model { get; init; }

    /// <summary>The pixels it was fitted to.</summary>
    public required EdgePixels Pixels { get; init; }

    /// <summary>Standard deviation of a pixel's light about the model, from the median.</summary>
    public required double Noise { get; init; }

    /// <summary>Standard deviation of the mean radius by that noise, pixels.</summary>
    public required double RadiusSd { get; init; }

    /// <summary>Fits the edge of a candidate, in three rounds with the band laid anew.</summary>
    /// <exception cref="RefusalException">The edge is too blurred or too noisy to be told.</exception>
    public static EdgeFit Of(ScanImage scan, HoleCandidate candidate)
    {
        var (outside, inside) = Levels(scan, candidate);
        var model = EdgeModel.From(candidate, outside, inside);
        EdgeFit? fit = null;
        for (var round = 0; round < 3; round++)
        {
            var pixels = EdgePixels.About(model, scan);
            fit = pixels.All.Length < 3 * model.Count ? null : Converge(model, pixels);
            if (fit is null || !(fit.Model.Sigma < fit.Model.MeanRadius / 2) || !(fit.Noise < Math.Abs(fit.Model.Contrast) / 2))
            {
                throw new RefusalException("The hole's edge cannot be told from blur and noise; scan at a higher resolution, in focus.");
            }

            model = fit.Model;
        }

        return fit!;
    }

    private static EdgeFit? Converge(EdgeModel model, EdgePixels pixels)
    {
        var residuals = new double[pixels.All.Length];
        var damping = 1e-3;
        Residuals(model, pixels, residuals);
        var scale = Scale(model, residuals);
        var cost = Cost(residuals, scale);
        NormalEquations? sums = null;
        for (var step = 0; step < MostSteps; step++)
        {
            sums ??= Sums(model, pixels, scale);
            if (sums.Solve(damping) is not { } move)
            {
                return null;
            }

            var moved = model.Moved(move);
            Residuals(moved, pixels, residuals);
            var next = Cost(residuals, scale);
            if (next > cost)
            {
                if (damping > 1e6)
                {
                    break;
                }

                damping *= 10;
                continue;
            }

            var gain = cost - next;
            (model, damping, sums) = (moved, damping / 10, null);
            scale = Scale(model, residuals);
            if (gain < Enough * cost)
            {
                break;
            }

            cost = Cost(residuals, scale);
        }

        return Sums(model, pixels, scale).Inverse() is { } inverse
            ? new EdgeFit
            {
                Model = model,
                Pixels = pixels,
                Noise = scale,
                RadiusSd = scale * Math.Sqrt(Math.Max(0, inverse[EdgeModel.RadiusPlace, EdgeModel.RadiusPlace])),
            }
            : null;
    }

    private static NormalEquations Sums(EdgeModel model, EdgePixels pixels, double scale)
    {
        var sums = new NormalEquations(model.Count);
        Span<double> derivatives = stackalloc double[model.Count];
        foreach (var (x, y, light) in pixels.All)
        {
            var (first, end) = model.LightAt(x, y, derivatives, out var expected);
            sums.Add(derivatives, light - expected, Weight((light - expected) / scale), first, end);
        }

        return sums;
    }

    // Huber's weight: burrs and dust on the edge pull with no more than their share. Huber, Ann. Math. Statist. 35, 73 (1964).
    private static double Weight(double residual) => Math.Abs(residual) <= HuberScale ? 1 : HuberScale / Math.Abs(residual);

    private static double Cost(double[] residuals, double scale)
    {
        var sum = 0.0;
        foreach (var residual in residuals)
        {
            var z = Math.Abs(residual / scale);
            sum += z <= HuberScale ? z * z / 2 : HuberScale * (z - (HuberScale / 2));
        }

        return sum;
    }

    private static void Residuals(EdgeModel model, EdgePixels pixels, double[] into)
    {
        Span<double> unused = stackalloc double[model.Count];
        for (var i = 0; i < into.Length; i++)
        {
            var (x, y, light) = pixels.All[i];
            model.LightAt(x, y, unused, out var expected);
            into[i] = light - expected;
        }
    }

    // 1.4826 times the median of the sizes is the standard deviation of a normal spread; half a code is the least that 8 bits can show.
    private static double Scale(EdgeModel model, double[] residuals)
    {
        var sizes = Array.ConvertAll(residuals, Math.Abs);
        Array.Sort(sizes);
        return Math.Max(1.4826 * sizes[sizes.Length / 2], 0.002 * Math.Abs(model.Contrast));
    }

    private static (double Outside, double Inside) Levels(ScanImage scan, HoleCandidate candidate)
    {
        double Around(double factor)
        {
            var lights = new List<float>();
            for (var i = 0; i < 64; i++)
            {
                var angle = 2 * Math.PI * i / 64;
                var (x, y) = (candidate.X + (factor * candidate.LongAxis * Math.Cos(angle)), candidate.Y + (factor * candidate.LongAxis * Math.Sin(angle)));
                if (x >= 0 && y >= 0 && x < scan.Width && y < scan.Height)
                {
                    lights.Add(scan.LightAt((int)x, (int)y));
                }
            }

            lights.Sort();
            return lights.Count == 0 ? 0.5 : lights[lights.Count / 2];
        }

        return (Around(1.6), Around(0.25));
    }
}
