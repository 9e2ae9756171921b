using CsCheck;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Camera;

/// <summary>Where the fit of an edge ends, from whatever it started, and where it gives up.</summary>
public sealed class EdgeFitEndTests
{
    private static readonly RenderedHole Clear = new() { LongAxis = 20, ShortAxis = 20, Noise = 0.02, Inside = 0.75, Outside = 0.1, Encoding = ScanEncoding.Linear };

    private static HoleCandidate Guess(double x, double y, double radius, bool bright = true) => new(x, y, Math.PI * radius * radius, radius, radius, 0, bright, false);

    // Huber's cost by its definition: squares up to one and a half standard deviations, straight lines beyond.
    private static double Cost(EdgeModel model, EdgeFit fit)
    {
        var sum = 0.0;
        foreach (var (x, y, light) in fit.Pixels.All)
        {
            var z = Math.Abs(light - model.LightAt(x, y)) / fit.Noise;
            sum += z <= 1.5 ? z * z / 2 : (1.5 * z) - 1.125;
        }

        return sum;
    }

    // A hole with a shadow on it and a bright flaw beside it, so that many pixels are off: of middle, radius, blur, levels, slope and shape none can be moved for the better.
    [Theory]
    [InlineData(0, 0, 20, 2)]
    [InlineData(-4, 3, 17, 1)]
    [InlineData(4, -4, 23, 3)]
    public void No_edge_nearby_explains_the_pixels_better(double right, double down, double radius, double blur)
    {
        var hole = Clear with { Blur = blur, Burr = (x, y) => y > 61 && Math.Abs(x - 48) < 6, More = (x, y) => x is > 68 and < 76 && Math.Abs(y - 44) < 4 };
        var fit = EdgeFit.Of(hole.Draw(), Guess(48 + right, 48 + down, radius));
        var least = Cost(fit.Model, fit);
        double[] steps = [0.03, 0.03, 0.03, 0.03, 0.01, 0.01, 0.001, 0.001, .. Enumerable.Repeat(0.03, fit.Model.Count - 8)];
        for (var i = 0; i < steps.Length; i++)
        {
            foreach (var sign in new[] { -1, 1 })
            {
                var move = new double[steps.Length];
                move[i] = sign * steps[i];
                Assert.True(Cost(fit.Model.Moved(move), fit) > least, $"unknown {i} by {move[i]}");
            }
        }
    }

    // The pixels say where the edge is, not the guess.
    [Theory]
    [InlineData(6, -6, 26, 3)]
    [InlineData(-6, 6, 16.5, 0.8)]
    [InlineData(6, 6, 16.5, 2)]
    public void A_poor_guess_ends_where_a_good_one_does(double right, double down, double radius, double blur)
    {
        var scan = (Clear with { Blur = blur }).Draw();
        var (good, poor) = (EdgeFit.Of(scan, Guess(48, 48, 20)), EdgeFit.Of(scan, Guess(48 + right, 48 + down, radius)));
        Assert.Equal(good.Model.X, poor.Model.X, 0.01);
        Assert.Equal(good.Model.Y, poor.Model.Y, 0.01);
        Assert.Equal(good.Model.MeanRadius, poor.Model.MeanRadius, 0.01);
        Assert.Equal(good.Model.Sigma, poor.Model.Sigma, 0.03);
        Assert.Equal(good.Model.Contrast, poor.Model.Contrast, 0.005);
    }

    // Half a code is the least doubt that a code leaves: rounding to 255 steps spreads by 1/(255·√12) = 0.0011, at little contrast as at much.
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.75)]
    public void Without_noise_the_codes_are_all_the_noise(double inside)
    {
        var fit = EdgeFit.Of((Clear with { Noise = 0, Inside = inside }).Draw(), Guess(48, 48, 20));
        Assert.InRange(fit.Noise, 0.0004, 0.0022);
        Assert.Equal(20, fit.Model.MeanRadius, 0.03);
    }

    // Levels of 0.4 and 0.6 under noise of 0.2: the step is no more than the noise of one pixel.
    [Fact]
    public void Noise_as_large_as_the_step_is_refused() => Gen.Int[1, 1000].Sample(seed => Assert.Contains(
        "cannot be told from blur and noise",
        Assert.Throws<RefusalException>(() => EdgeFit.Of((Clear with { Inside = 0.6, Outside = 0.4, Noise = 0.2, Seed = seed }).Draw(), Guess(48, 48, 20))).Message,
        StringComparison.Ordinal), iter: Samples.Of(3));

    // Three pixels an unknown are the fewest: a hole of four pixels has 8 unknowns and 4 of shape, so 36, which are all that a scan of six by six has.
    [Theory]
    [InlineData(6, 6, true)]
    [InlineData(5, 7, false)]
    public void Fewer_than_three_pixels_an_unknown_are_refused(int width, int height, bool fits)
    {
        var scan = (Clear with { Width = width, Height = height, X = width / 2.0, Y = height / 2.0, LongAxis = 2, ShortAxis = 2, Blur = 0.3, Noise = 0.002 }).Draw();
        EdgeFit Fit() => EdgeFit.Of(scan, Guess(width / 2.0, height / 2.0, 2));
        if (fits)
        {
            Assert.Equal(36, Fit().Pixels.All.Length);
        }
        else
        {
            Assert.Throws<RefusalException>(Fit);
        }
    }

    // What lies around it, three fifths farther out, is partly off the scan or just at its end (72 + 1.6 · 15 = 96).
    [Theory]
    [InlineData(48, 72)]
    [InlineData(72, 48)]
    [InlineData(20, 20)]
    [InlineData(76, 76)]
    [InlineData(76, 19)]
    [InlineData(19, 76)]
    public void A_hole_close_to_the_border_is_fitted_as_any_other(double x, double y)
    {
        var model = EdgeFit.Of((Clear with { X = x, Y = y, LongAxis = 15, ShortAxis = 15, Noise = 0 }).Draw(), Guess(x, y, 15)).Model;
        Assert.Equal(x, model.X, 0.03);
        Assert.Equal(y, model.Y, 0.03);
        Assert.Equal(15, model.MeanRadius, 0.03);
        Assert.Equal(0.65, model.Contrast, 0.01);
    }

    [Fact]
    public void An_edge_beside_the_scan_is_refused() => Assert.Throws<RefusalException>(() => EdgeFit.Of(Clear.Draw(), Guess(200, 48, 10)));
}
