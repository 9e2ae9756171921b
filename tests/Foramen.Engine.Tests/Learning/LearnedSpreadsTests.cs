using Foramen.Engine.Exposure;
using Foramen.Engine.Learning;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using MathNet.Numerics.LinearAlgebra;
using static Foramen.Engine.Tests.Exposure.ExposureExamples;
using static Foramen.Engine.Tests.Learning.LearningExamples;

namespace Foramen.Engine.Tests.Learning;

/// <summary>
/// What a planner is told of beliefs, against the formula for linear combinations: what bears on a tone as a vector h, its mean is h·m and its variance hᵀΣh, at
/// any time of exposure. The planner knows only sums of squares and a line from the time it knows the box best at; both must come to the same.
/// </summary>
public class LearnedSpreadsTests
{
    private static readonly ToneEvidence[] Shown =
    [
        LearningExamples.Tone(0.5, 0.3),
        LearningExamples.Tone(0.1, 0.3) with { Rendering = Rendering.OpenShadow },
        LearningExamples.Tone(0.9, 0.3) with { Rendering = Rendering.TexturedHighlight, FlashShare = 0.2 },
    ];

    // Long exposures mostly, so that speed and failure go together, and a bottle in use.
    private static readonly Beliefs Taught = Beliefs.From(
        Enumerable.Range(0, 9).Select(i => Sheet($"{i}", 0, i % 2 == 0 ? "noon" : "overcast") with
        {
            Doublings = i % 4,
            SheetsInBottle = i,
            Tones = [Shown[i % 3], Shown[(i + 1) % 3]],
        }),
        Now);

    private static readonly BeliefKey[] Keys = [.. Taught.All.Select(belief => belief.Key)];

    private static readonly Vector<double> Means = Vector<double>.Build.DenseOfEnumerable(Taught.All.Select(belief => belief.Mean.Value));

    private static readonly Matrix<double> Covariance = Matrix<double>.Build.Dense(Keys.Length, Keys.Length, (i, j) => Taught.Covariance(Keys[i], Keys[j]));

    private static readonly PlacedTone Wall = Tone("wall", Rendering.Mid, 2200);
    private static readonly PlacedTone Doorway = Tone("doorway", Rendering.OpenShadow, 600, 0.2);
    private static readonly PlacedTone Elevator = Tone("elevator", Rendering.TexturedHighlight, 5500, 0.1);
    private static readonly PlacedTone Lamp = Tone("lamp", Rendering.MayBurn, 90_000);

    private static PlanBasis Basis { get; } = new()
    {
        Paper = Positive,
        Light = LightColour.Noon,
        Tones = [Wall],
        Conditions = new SheetConditions { Box = "box", Camera = "Box A", Sky = "noon", SheetsInBottle = 7 },
    };

    [Theory]
    [InlineData(20)]
    [InlineData(120)]
    [InlineData(1500)]
    public void A_tone_lands_as_much_lighter_than_labelled_as_is_believed(double seconds)
    {
        PlacedTone[] tones = [Wall, Doorway, Elevator, Lamp];
        var basis = Basis with { Tones = tones };
        var exposure = new SheetExposure(Duration.FromSeconds(seconds), default);
        var (labelled, learned) = (Labelled(basis).Land(exposure), Taught.Plan(basis).Planner.Land(exposure));
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(
                Of(tones[i].Rendering, Math.Log2(seconds / 120)) * Means,
                learned[i].FromAim!.Value.Value - labelled[i].FromAim!.Value.Value,
                1e-6);
        }
    }

    // The speed was found in a flash of light: below a second nothing fails, so failure is counted from a second.
    [Fact]
    public void A_box_whose_speed_was_found_below_a_second_counts_from_a_second()
    {
        var basis = Basis with { Paper = Positive with { SpeedFoundAt = Duration.FromSeconds(0.25) } };
        var exposure = new SheetExposure(Duration.FromSeconds(64), default);
        var moved = Taught.Plan(basis).Planner.Land(exposure)[0].FromAim!.Value.Value - Labelled(basis).Land(exposure)[0].FromAim!.Value.Value;
        Assert.Equal(Of(Rendering.Mid, 6) * Means, moved, 1e-6);
    }

    [Theory]
    [InlineData(Rendering.Mid)]
    [InlineData(Rendering.OpenShadow)]
    [InlineData(Rendering.TexturedHighlight)]
    public void One_tone_s_variance_is_that_of_the_sum_at_every_time(Rendering rendering)
    {
        var tone = Wall with { Rendering = rendering };
        var plan = Taught.Plan(Basis with { Tones = [tone, Lamp] });
        foreach (var seconds in new[] { 2, 30, 120, 480, 4000.0 })
        {
            var h = Of(rendering, Math.Log2(seconds / 120));
            Assert.Equal(h * Covariance * h, Variance(plan, seconds) + Square(OwnOf(plan, 0, tone)), 1e-9);
        }

        Assert.NotInRange(Math.Log2(plan.Paper.SpeedFoundAt.Seconds / 120), -0.1, 0.1);
    }

    // Of several tones the planner knows one failure, so their variances are right on the mean at every time, and each at the label's time.
    [Fact]
    public void Several_tones_variances_are_those_of_their_sums()
    {
        PlacedTone[] tones = [Wall, Doorway, Elevator];
        var plan = Taught.Plan(Basis with { Tones = [.. tones, Lamp] });
        foreach (var seconds in new[] { 2, 30, 120, 480, 4000.0 })
        {
            var expected = tones.Select(tone => Of(tone.Rendering, Math.Log2(seconds / 120))).Select(h => h * Covariance * h).ToList();
            var planned = tones.Select((tone, i) => Variance(plan, seconds) + Square(OwnOf(plan, i, tone))).ToList();
            Assert.Equal(expected.Average(), planned.Average(), 1e-9);
            if (seconds == 120)
            {
                Assert.All(expected.Zip(planned), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
            }
        }

        // What all share is the mean of the covariances of two of them.
        var (wall, doorway, elevator) = (Of(Rendering.Mid, 0), Of(Rendering.OpenShadow, 0), Of(Rendering.TexturedHighlight, 0));
        var shared = ((wall * Covariance * doorway) + (wall * Covariance * elevator) + (doorway * Covariance * elevator)) / 3;
        Assert.Equal(shared, Variance(plan, 120), 1e-9);
    }

    // Each source's part is its covariance with the sum, at the time the box is known best at.
    [Fact]
    public void What_is_unsure_is_divided_by_covariance_with_the_sum()
    {
        var plan = Taught.Plan(Basis);
        var doublings = Math.Log2(plan.Paper.SpeedFoundAt.Seconds / 120);
        var h = Of(Rendering.Mid, doublings);
        var with = Covariance * h;

        // The least that a variance of h(d) comes to, by looking at many times.
        var least = Enumerable.Range(-6000, 12_001).Select(i => Of(Rendering.Mid, i / 1000.0)).Min(at => at * Covariance * at);
        Assert.Equal(least, h * with, 1e-7);

        double PartOf(BeliefKind kind) => Keys.Select((key, i) => key.Kind == kind ? Math.Max(0, h[i] * with[i]) : 0).Sum();
        BeliefKind[] kinds = [BeliefKind.Speed, BeliefKind.Meter, BeliefKind.Camera, BeliefKind.Light, BeliefKind.Ageing];
        var all = kinds.Sum(PartOf);
        Assert.Equal(Math.Sqrt(least * PartOf(BeliefKind.Speed) / all), plan.Errors.Paper.Value, 1e-6);
        Assert.Equal(plan.Errors.Paper, plan.Paper.SpeedSpread);
        Assert.Equal(Math.Sqrt(least * PartOf(BeliefKind.Meter) / all), plan.Errors.Meter.Value, 1e-6);
        Assert.Equal(Math.Sqrt(least * PartOf(BeliefKind.Camera) / all), plan.Errors.Hole.Value, 1e-6);
        Assert.Equal(least * PartOf(BeliefKind.Light) / all, Square(plan.Errors.Light.Value) - Square(Taught.ScatterFactor * 0.20), 1e-6);
        Assert.Equal(least * PartOf(BeliefKind.Ageing) / all, Square(plan.Errors.Development.Value) - Square(Taught.ScatterFactor * 0.20), 1e-6);
        Assert.Equal(Taught.ScatterFactor * 0.02, plan.Errors.Timing.Value, 1e-12);
        Assert.NotInRange(Taught.ScatterFactor, 0.99, 1.01);
        Assert.Equal(0, plan.Errors.Colour.Value);
        Assert.Equal(Taught.Of(new BeliefKey(BeliefKind.Failure, "box")).Spread.Value, plan.Paper.FailureSpreadPerDoubling, 1e-12);
    }

    [Fact]
    public void Without_a_camera_or_a_sky_the_errors_of_hole_and_colour_stay_as_they_were_assumed()
    {
        var errors = Basis.Errors with { Hole = Stops.FromValue(0.17), Colour = Stops.FromValue(0.23) };
        var bare = Taught.Plan(Basis with { Errors = errors, Conditions = Basis.Conditions with { Camera = null, Sky = null } }).Errors;
        Assert.Equal(0.17, bare.Hole.Value);
        Assert.Equal(0.23, bare.Colour.Value);
        Assert.Equal(Taught.ScatterFactor * 0.20, bare.Light.Value, 1e-12);
    }

    // A strip may state a failure exactly: then there is no line, and the box stays known at the time it was found at.
    [Fact]
    public void A_failure_that_is_known_exactly_adds_nothing_at_any_time()
    {
        var plan = Beliefs.From([], Now).Plan(Basis with { Conditions = Basis.Conditions with { FailureSpread = Stops.Zero } });
        Assert.Equal(0, plan.Paper.FailureSpreadPerDoubling);
        Assert.Equal(120, plan.Paper.SpeedFoundAt.Seconds, 1e-9);
        Assert.Equal(0.8, plan.Errors.Paper.Value, 1e-9);
    }

    [Fact]
    public void A_strip_s_box_in_known_light_may_leave_nothing_unsure_but_the_sheet_itself()
    {
        var known = new SheetConditions { Box = "box", Metered = false, LabelSpread = Stops.Zero, FailureSpread = Stops.Zero };
        var errors = Beliefs.From([], Now).Plan(Basis with { Conditions = known }).Errors;
        Assert.Equal(0, errors.Paper.Value);
        Assert.Equal(0, errors.Meter.Value);
        Assert.Equal(0.20, errors.Light.Value, 1e-12);
        Assert.Equal(0.20, errors.Development.Value, 1e-12);
    }

    [Fact]
    public void A_flash_is_as_strong_as_it_is_believed_and_as_unsure()
    {
        var flash = Taught.Of(PlainModel.Flash);
        Assert.NotInRange(flash.Mean.Value, -0.01, 0.01);
        foreach (var setup in new[] { FlashSetup.AtSurface(OnSheet(900)), FlashSetup.OpenSheet(OnSheet(900)) })
        {
            var plan = Taught.Plan(Basis with { Flash = setup });
            Assert.Equal(flash.Mean.Value, Math.Log2(plan.Flash.OnSheet.Lux / setup.OnSheet.Lux), 1e-9);
            Assert.Equal(setup.ThroughHole, plan.Flash.ThroughHole);
            Assert.Equal(Math.Sqrt((0.15 * 0.15) + Square(flash.Spread.Value)), plan.Errors.Flash.Value, 1e-9);
        }

        Assert.Same(FlashSetup.None, Taught.Plan(Basis).Flash);
    }

    private static Vector<double> Of(Rendering rendering, double doublings)
    {
        var sheet = Sheet("a", 0) with { Doublings = doublings, SheetsInBottle = 7 };
        return PlainModel.Slopes(at => PlainModel.Expected(sheet, LearningExamples.Tone(0, 1) with { Rendering = rendering }, Keys, at), Means);
    }

    private static ExposurePlanner Labelled(PlanBasis basis)
        => new(Foramen.Engine.Paper.PaperResponse.Of(basis.Paper, basis.Light), basis.Tones, basis.Flash, basis.Errors);

    // What the planner takes all tones to share at a time, but for what a single sheet does by itself.
    private static double Variance(LearnedPlan plan, double seconds)
    {
        var errors = plan.Errors;
        var single = Square(Taught.ScatterFactor) * (Square(plan.Basis.Errors.Light.Value) + Square(plan.Basis.Errors.Development.Value));
        return Square(errors.Paper.Value) + Square(errors.Meter.Value) + Square(errors.Hole.Value) + Square(errors.Light.Value) + Square(errors.Development.Value)
            + Square(plan.Paper.FailureSpread(Duration.FromSeconds(seconds)).Value) - single;
    }

    // What a tone has of its own, but for its reading.
    private static double OwnOf(LearnedPlan plan, int tone, PlacedTone before)
        => Math.Sqrt(Math.Max(0, Square(plan.Tones[tone].MeterSpread.Value) - Square(Taught.ReadingFactor * before.MeterSpread.Value)));

    private static double Square(double value) => value * value;
}
