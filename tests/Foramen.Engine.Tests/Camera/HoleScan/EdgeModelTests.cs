using CsCheck;
using Foramen.Engine.Camera;

namespace Foramen.Engine.Tests.Camera;

public sealed class EdgeModelTests
{
    // Unknowns in their order: middle across and down, mean radius, blur, light outside, step, slopes, and then the waves of the outline.
    private const int X = 0, Y = 1, Radius = 2, Blur = 3, Outside = 4, Step = 5, SlopeX = 6, SlopeY = 7, Waves = 8;

    private static readonly Gen<EdgeModel> AnyModel = Gen.Select(
        Gen.Double[10, 40], Gen.Double[0.5, 2], Gen.Double[-0.5, 0.5].Array[6], Gen.Double[-0.003, 0.003], Gen.Double[-0.003, 0.003], Gen.Double[0.3, 0.8])
        .Select((radius, blur, waves, slopeX, slopeY, inside) =>
        {
            var model = Circle(radius, 0.1, inside);
            var move = new double[model.Count];
            (move[Blur], move[SlopeX], move[SlopeY]) = (blur - 1, slopeX, slopeY);
            waves.AsSpan().CopyTo(move.AsSpan(Waves));
            return model.Moved(move);
        });

    // The derivatives against differences: light a little to either side of each unknown. That the bend changes with the radius is left out of them: σ²/2ρ², under 2 % here.
    [Fact]
    public void Derivatives_are_the_changes_of_the_light() => Gen.Select(AnyModel, Gen.Double[0, 2 * Math.PI], Gen.Double[-3, 3]).Sample((model, angle, away) =>
    {
        var r = model.RadiusAt(angle) + (away * model.Sigma);
        var (x, y) = (50 + (r * Math.Cos(angle)), 60 + (r * Math.Sin(angle)));
        var derivatives = new double[model.Count];
        Assert.Equal((0, model.Count), model.LightAt(x, y, derivatives, out var light));
        Assert.Equal(light, model.LightAt(x, y), 1e-15);
        for (var i = 0; i < model.Count; i++)
        {
            const double Little = 1e-5;
            double After(double step)
            {
                var move = new double[model.Count];
                move[i] = step;
                return model.Moved(move).LightAt(x, y);
            }

            var expected = (After(Little) - After(-Little)) / (2 * Little);
            Assert.Equal(expected, derivatives[i], 0.0005 + (0.02 * Math.Abs(expected)));
        }
    });

    [Fact]
    public void Far_from_the_edge_only_the_levels_and_the_slope_are_told_of() => Gen.Select(AnyModel, Gen.Double[0, 2 * Math.PI], Gen.Bool).Sample((model, angle, inside) =>
    {
        var r = inside ? 1 : model.MeanRadius + 30;
        var (x, y) = (50 + (r * Math.Cos(angle)), 60 + (r * Math.Sin(angle)));
        var derivatives = Enumerable.Repeat(double.NaN, model.Count).ToArray();
        if (inside && model.MeanRadius - model.Reach - (5 * model.Sigma) < 2)
        {
            return;
        }

        var (first, end) = model.LightAt(x, y, derivatives, out var light);
        Assert.Equal((Outside, SlopeY + 1), (first, end));
        Assert.Equal((1, inside ? 1 : 0), (derivatives[Outside], derivatives[Step]));
        Assert.Equal(x - 50, derivatives[SlopeX], 1e-9);
        Assert.Equal(y - 60, derivatives[SlopeY], 1e-9);

        // Without the slope it is one level or the other.
        var move = new double[model.Count];
        (move[SlopeX], move[SlopeY]) = (-(SlopesOf(model).X), -(SlopesOf(model).Y));
        Assert.Equal(inside ? 0.1 + model.Contrast : 0.1, model.Moved(move).LightAt(x, y), 1e-9);
    });

    // Near and far are one law: where the far one begins the edge has less than a hundred-thousandth of the step left.
    [Fact]
    public void Nothing_jumps_on_the_way_out() => Gen.Select(AnyModel, Gen.Double[0, 2 * Math.PI]).Sample((model, angle) =>
    {
        var (slopeX, slopeY) = SlopesOf(model);
        var before = double.NaN;
        for (var r = 2.0; r < model.MeanRadius + 30; r += 0.01)
        {
            var (dx, dy) = (r * Math.Cos(angle), r * Math.Sin(angle));
            var light = model.LightAt(50 + dx, 60 + dy) - (slopeX * dx) - (slopeY * dy);
            if (!double.IsNaN(before))
            {
                // No steeper than the Gaussian is in its middle, and never brighter outwards.
                Assert.InRange(before - light, -1e-5, (model.Contrast * 0.01 / (Math.Sqrt(2 * Math.PI) * model.Sigma)) + 1e-5);
            }

            before = light;
        }
    }, iter: Samples.Of(20));

    // Blur moves light and loses none: all light above the level outside is the step times the hole's area, π(R² + σ⁴/4R²) to the order of the model (by hand: the integral of
    // a Gaussian edge at μ is π(μ² + σ²), with μ = R − σ²/2R).
    [Fact]
    public void Blur_keeps_the_holes_light() => Gen.Select(Gen.Double[9, 25], Gen.Double[0.5, 2.5]).Sample((radius, blur) =>
    {
        var start = Circle(radius, 0.1, 0.7);
        var move = new double[start.Count];
        move[Blur] = blur - 1;
        var model = start.Moved(move);
        var sum = 0.0;
        for (var i = 0; i < 120 * 120; i++)
        {
            sum += (model.LightAt(0.5 + (i % 120), 0.5 + (i / 120)) - 0.1) / 0.6;
        }

        Assert.Equal(Math.PI * ((radius * radius) + (Math.Pow(blur, 4) / (4 * radius * radius))), sum, 0.002 * radius * radius);
    }, iter: Samples.Of(20));

    // Of an ellipse little longer than wide the outline is R + e·cos 2(θ − direction), e half the difference of the half axes.
    [Fact]
    public void The_first_guess_is_an_ellipse() => Gen.Select(Gen.Double[3, 40], Gen.Double[0.85, 1], Gen.Double[-1.5, 1.5], Gen.Double[0, 6.2]).Sample((axis, ratio, direction, angle) =>
    {
        var (longAxis, shortAxis) = (axis, axis * ratio);
        var model = EdgeModel.From(new HoleCandidate(50, 60, Math.PI * longAxis * shortAxis, longAxis, shortAxis, direction, true, false), 0.2, 0.9);
        Assert.Equal(Math.Sqrt(longAxis * shortAxis) + ((longAxis - shortAxis) / 2), model.RadiusAt(direction), 1e-9);
        Assert.Equal(Math.Sqrt(longAxis * shortAxis) - ((longAxis - shortAxis) / 2), model.RadiusAt(direction + (Math.PI / 2)), 1e-9);
        Assert.True(Math.Abs(model.RadiusAt(angle) - model.MeanRadius) <= model.Reach + 1e-12);
        Assert.Equal((50, 60, 0.7), (model.X, model.Y, Math.Round(model.Contrast, 12)));
    });

    // More pixels tell of finer waves: to the third, the fourth and the sixth.
    [Theory]
    [InlineData(7.9, 3)]
    [InlineData(8.1, 4)]
    [InlineData(15.9, 4)]
    [InlineData(16.1, 6)]
    public void A_larger_hole_may_have_a_finer_outline(double radius, int waves)
        => Assert.Equal(Waves + (2 * (waves - 1)), Circle(radius, 0, 1).Count);

    // Each wave goes so many times about.
    [Theory]
    [InlineData(0, 2, 0)]
    [InlineData(1, 2, 45)]
    [InlineData(2, 3, 0)]
    [InlineData(3, 3, 30)]
    [InlineData(8, 6, 0)]
    [InlineData(9, 6, 15)]
    public void A_wave_has_its_crests_in_even_directions(int place, int times, double firstCrest)
    {
        var model = Circle(20, 0, 1);
        var move = new double[model.Count];
        move[Waves + place] = 0.5;
        var waved = model.Moved(move);
        Assert.Equal(0.5, waved.Reach, 1e-12);
        for (var i = 0; i < times; i++)
        {
            Assert.Equal(20.5, waved.RadiusAt((firstCrest + (360.0 * i / times)) * Math.PI / 180), 1e-9);
            Assert.Equal(19.5, waved.RadiusAt((firstCrest + (360.0 * (i + 0.5) / times)) * Math.PI / 180), 1e-9);
        }
    }

    // A quarter pixel is the sharpest edge there is; blur beyond the hole itself and a hole of no size are held back.
    [Fact]
    public void Steps_too_far_are_held_back()
    {
        var model = Circle(20, 0, 1);
        EdgeModel Moved(int unknown, double by)
        {
            var move = new double[model.Count];
            move[unknown] = by;
            return model.Moved(move);
        }

        Assert.Equal(0.25, Moved(Blur, -5).Sigma);
        Assert.Equal(20, Moved(Blur, 100).Sigma);
        Assert.Equal(2, Moved(Radius, -50).MeanRadius);
        Assert.Equal((51, 58), (Moved(X, 1).X, Moved(Y, -2).Y));
    }

    private static (double X, double Y) SlopesOf(EdgeModel model)
        => ((model.LightAt(50 + 200, 60) - model.LightAt(50 - 200, 60)) / 400, (model.LightAt(50, 60 + 200) - model.LightAt(50, 60 - 200)) / 400);

    private static EdgeModel Circle(double radius, double outside, double inside)
        => EdgeModel.From(new HoleCandidate(50, 60, Math.PI * radius * radius, radius, radius, 0, true, false), outside, inside);
}
