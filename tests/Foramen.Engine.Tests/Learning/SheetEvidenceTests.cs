using Foramen.Engine.Exposure;
using Foramen.Engine.Learning;
using Foramen.Engine.Light;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Learning.LearningExamples;

namespace Foramen.Engine.Tests.Learning;

public class SheetEvidenceTests
{
    // 0.2, 0.2 and 0.1 are 0.3 together; with the stop of something that went wrong, √1.09.
    [Fact]
    public void A_sheet_that_went_wrong_scatters_by_a_stop_more()
    {
        var basis = new PlanBasis
        {
            Paper = Exposure.ExposureExamples.Positive,
            Light = LightColour.Noon,
            Tones = [Exposure.ExposureExamples.Tone("wall", Rendering.Mid, 2200)],
            Conditions = new SheetConditions
            {
                Box = "box", Camera = "tin", Sky = "noon", Metered = false, SheetsInBottle = 4,
                LabelSpread = Stops.FromValue(0.2), FailureSpread = Stops.FromValue(0.03),
            },
            Errors = new ExposureErrors { Light = Stops.FromValue(0.2), Development = Stops.FromValue(0.2), Timing = Stops.FromValue(0.1) },
        };
        Evidence Of(bool upset) => SheetEvidence.Of(
            "a", EvidenceKind.Scan, Now, basis, Duration.FromSeconds(480), [Tone(0.2, 0.3)], true, upset);
        Assert.Equal(0.3, Of(false).Scatter.Value, 1e-12);
        Assert.Equal(Math.Sqrt(1.09), Of(true).Scatter.Value, 1e-12);

        // The speed was found at 120 s; 480 s are two doublings. All else is the basis's.
        var evidence = Of(false);
        Assert.Equal(2, evidence.Doublings, 1e-12);
        Assert.Equal(basis.Conditions, evidence.Conditions());
        Assert.True(evidence.Kept);
        Assert.Equal(EvidenceKind.Scan, evidence.Kind);
    }

    [Fact]
    public void A_meter_is_taken_to_be_used_unless_it_is_said_that_it_was_not() => Assert.True(new SheetConditions { Box = "box" }.Metered);
}
