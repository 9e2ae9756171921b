using CsCheck;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Paper.PaperExamples;
using static Foramen.Engine.Tests.Paper.Strips.StripExamples;

namespace Foramen.Engine.Tests.Paper.Strips;

public class StripPosteriorTests
{
    // As good as no prior on where the curve lies, so that nothing but the strip says it.
    private static readonly StripPrior Open = StripPrior.Usual with { MidLgExposure = (0.7, 1e4) };

    [Theory]
    [InlineData(PaperKind.NegativeWorking)]
    [InlineData(PaperKind.DirectPositive)]
    public void A_strip_that_says_nothing_leaves_what_was_thought_before(PaperKind kind)
    {
        var nothing = new Strip { OnSheet = Lamp(0.1), Light = LightColour.Lamp, LightSpread = Stops.FromValue(0.3) };
        var posterior = Posterior(kind, StripPrior.Usual, nothing);
        (double Mean, double Sd)[] prior =
            [(Math.Log(0.07), 0.5), (Math.Log(1.85), 0.22), (Math.Log(5.5), 0.45), (0.7, 1.2), (0, 0.35), (0, 0.05), (0, 0.3 * Math.Log10(2))];
        for (var i = 0; i < prior.Length; i++)
        {
            Assert.Equal(prior[i].Mean, posterior.Free[i], 1e-6);
            for (var j = 0; j < prior.Length; j++)
            {
                Assert.Equal(i == j ? prior[i].Sd * prior[i].Sd : 0, posterior.Covariance[i, j], 1e-9);
            }
        }

        Assert.Equal(1, posterior.Scale, 1e-6);
        Assert.Equal(8, posterior.Freedom, 1e-6);
    }

    // The scale is the root of a mean of squares: eight patches that scatter as stated, and the real ones, less the parameters that they decided.
    [Fact]
    public void The_scale_weighs_eight_patches_as_stated_with_the_real_ones() => Gen.Select(Gen.Enum<PaperKind>(), Gen.Double[-0.08, 0.08].Array[11]).Sample(
        (kind, noise) =>
        {
            var strip = Noisy(Of(kind == PaperKind.NegativeWorking ? Negative : Positive, 0.12, 4, 0.5, 11), noise);
            var posterior = Posterior(kind, StripPrior.Usual, strip);
            double[] spreads = [0.5, 0.22, 0.45, 1.2, 0.35, 0.05, 0.1 * Math.Log10(2)];
            var decided = 7 - spreads.Select((sd, i) => posterior.Covariance[i, i] / (sd * sd)).Sum();
            Assert.Equal(8 + 12 - decided, posterior.Freedom, 1e-3);
            var squares = StripPatches.Of(posterior, [strip]).Sum(patch => patch.Trust * Math.Pow(patch.Density.Value - patch.Fitted.Value, 2)) / ((0.02 * 0.02) + (0.01 * 0.01));
            Assert.Equal(posterior.Scale, Math.Sqrt((8 + squares) / posterior.Freedom), 1e-3);
        },
        iter: Samples.Of(30));

    // A hundred or ten thousand times the light: the same curve as far along, whether the patches cross its middle, end before it or begin behind it, or only an eye judged them.
    [Theory]
    [InlineData(PaperKind.NegativeWorking)]
    [InlineData(PaperKind.DirectPositive)]
    public void Wherever_on_the_scale_of_light_a_strip_lies_its_curve_is_found(PaperKind kind)
    {
        CharacteristicCurve curve = kind == PaperKind.NegativeWorking ? Negative : Positive;
        var whole = Of(curve, 0.1, 4, 0.5, 11);
        Strip[] strips =
        [
            whole,
            Of(curve, 0.1, 2, 0.5, 7),
            Of(curve, 0.1, 60, 0.5, 7),
            whole with
            {
                Patches = [],
                Times = [.. whole.Patches.Skip(1).Select(patch => patch.Time)],
                Eye = [new EyeReading(EyeReadingKind.FirstTone, 3), new EyeReading(EyeReadingKind.LastTone, 9)],
            },
        ];
        foreach (var strip in strips)
        {
            var here = Posterior(kind, Open, strip);
            foreach (var decades in new[] { -4, -2, 2, 4 })
            {
                var there = Posterior(kind, Open, strip with { OnSheet = Illuminance.FromLux(strip.OnSheet.Lux * Math.Pow(10, decades)) });
                Assert.Equal(here.Free[StripParameters.Middle] + decades, there.Free[StripParameters.Middle], 0.002);
                Assert.Equal(here.Free[StripParameters.LnSteepness], there.Free[StripParameters.LnSteepness], 0.002);
            }
        }
    }

    // A patch of the end that was read as half-way lies nearest to the middle of the scale, but not of the curve.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(10)]
    [InlineData(11)]
    public void A_gross_misreading_at_an_end_does_not_lead_the_search_astray(int misread)
    {
        foreach (var (kind, curve) in new[] { (PaperKind.NegativeWorking, Negative), (PaperKind.DirectPositive, Positive) })
        {
            var strip = Of(curve, 0.1, 4, 0.5, 11);
            var middle = D(curve.MinimumDensity.Value + (curve.NetDensity / 2));
            var wrong = strip with { Patches = [.. strip.Patches.Select((patch, i) => i == misread ? StripPatch.Exposed(patch.Time, middle, 0.02) : patch)] };
            Assert.Equal(Posterior(kind, Open, strip).Free[StripParameters.Middle], Posterior(kind, Open, wrong).Free[StripParameters.Middle], 0.05);
        }
    }

    // From light to dark a negative is a positive seen from the other end of the scale: the mirrored readings have the mirrored curve.
    [Fact]
    public void A_mirrored_strip_has_the_mirrored_curve() => Gen.Double[-0.03, 0.03].Array[11].Sample(
        noise =>
        {
            // Without failure, so that time alone is exposure; x runs from 0.1 to 1.1 and is mirrored at 0.6.
            var prior = Open with { Failure = SchwarzschildFailure.FromExponent(1), FailureSpread = 1e-4 };
            Strip Of(double sign) => new()
            {
                OnSheet = Lamp(1),
                Light = LightColour.Lamp,
                LightSpread = Stops.FromValue(0.01),
                Patches = [.. noise.Select((off, i) => StripPatch.Exposed(S(Math.Pow(10, 0.6 + (sign * 0.1 * (i - 5)))), D(Math.Max(0, Negative.DensityAtLg(-0.2 + (0.1 * i)) + off)), 0.02))],
            };
            var (negative, positive) = (Posterior(PaperKind.NegativeWorking, prior, Of(1)), Posterior(PaperKind.DirectPositive, prior, Of(-1)));
            Assert.Equal(1.2 - negative.Free[StripParameters.Middle], positive.Free[StripParameters.Middle], 1e-3);
            Assert.Equal(negative.Free[StripParameters.LnSteepness], positive.Free[StripParameters.LnSteepness], 1e-3);
            Assert.Equal(negative.Free[StripParameters.LnNet], positive.Free[StripParameters.LnNet], 1e-3);
        },
        iter: Samples.Of(20));

    // ∂f/∂x of a sum of known functions, and √(gᵀ·C·g) with it.
    [Fact]
    public void Doubt_of_a_function_is_that_of_its_parameters_by_the_covariance()
    {
        var posterior = Posterior(PaperKind.NegativeWorking, StripPrior.Usual, Of(Negative, 0.1, 4, 0.5, 11));
        var (value, sd) = posterior.Propagate(free => (2 * free[0]) - (3 * free[3]));
        Assert.Equal((2 * posterior.Free[0]) - (3 * posterior.Free[3]), value, 1e-12);
        var c = posterior.Covariance;
        Assert.Equal(Math.Sqrt((4 * c[0, 0]) + (9 * c[3, 3]) - (12 * c[0, 3])), sd, 1e-8);
    }

    private static StripPosterior Posterior(PaperKind kind, StripPrior prior, params Strip[] strips)
        => StripPosterior.Of(kind, StripRows.Of(strips, kind, PaperSensitivity.BlueSensitive, prior.Failure), prior);

    private static Strip Noisy(Strip strip, double[] noise) => strip with
    {
        Patches = [.. strip.Patches.Select((patch, i) => i == 0
            ? patch
            : StripPatch.Exposed(patch.Time, D(Math.Max(0, patch.Density.Value + noise[i - 1])), patch.DensitySpread))],
    };
}
