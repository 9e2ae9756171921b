using Foramen.Engine.Camera;
using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Camera.CameraExamples;

namespace Foramen.Engine.Tests.Exposure;

public class ExposureErrorsTests
{
    // The f-number is off by √(0.03² + 0.04²) = 0.05, its square, in stops, by 2·log2 1.05 = 0.1408.
    [Fact]
    public void The_hole_s_error_is_that_of_diameter_and_distance_in_stops()
    {
        var camera = PinholeCamera.Create("box", Hole.FromDiameter(Mm(0.35), 0.03), Mm(63), SheetSize.FromMillimetres(127, 102)).WithFocalDistanceSpread(0.04);
        var errors = ExposureErrors.Of(camera, Stops.FromValue(0.2), Stops.FromValue(0.1));
        Assert.Equal(0.1408, errors.Hole.Value, 0.00005);
        Assert.Equal(0.2, errors.Paper.Value);
        Assert.Equal(0.1, errors.Colour.Value);
    }

    [Fact]
    public void Taking_an_error_away_takes_away_that_one_alone()
    {
        var errors = new ExposureErrors { Failure = Stops.FromValue(0.1) };
        foreach (var source in Enum.GetValues<ErrorSource>().Where(source => source is not (ErrorSource.ToneReadings or ErrorSource.SceneRange)))
        {
            var without = errors.Without(source);
            foreach (var other in Enum.GetValues<ErrorSource>())
            {
                Assert.Equal(other == source ? 0 : Of(errors, other), Of(without, other));
            }
        }

        Assert.Equal(errors, errors.Without(ErrorSource.ToneReadings));
    }

    // A card of 0.85 lies in the light of a tone taken for 0.18.
    [Fact]
    public void A_white_card_beside_a_tone_is_as_much_lighter_as_it_reflects_more()
    {
        Tone Of(string name, Rendering rendering) => new() { Name = name, Rendering = rendering, Luminance = Luminance.FromCandelasPerSquareMetre(180), MeterSpread = Stops.Zero };
        Tone[] tones = [Of("sky", Rendering.MayBurn), Of("wall", Rendering.Mid), Of("path", Rendering.Mid)];
        Assert.Equal("wall", WhiteCard.InTheLightOf(tones).Name);
        Assert.Equal("sky", WhiteCard.InTheLightOf(tones[..1]).Name);
        Assert.Equal(850, WhiteCard.LuminanceBeside(tones[1]).CandelasPerSquareMetre, 1e-9);
    }

    private static double Of(ExposureErrors errors, ErrorSource source) => source switch
    {
        ErrorSource.Paper => errors.Paper.Value,
        ErrorSource.Failure => errors.Failure.Value,
        ErrorSource.Meter => errors.Meter.Value,
        ErrorSource.Light => errors.Light.Value,
        ErrorSource.Colour => errors.Colour.Value,
        ErrorSource.Hole => errors.Hole.Value,
        ErrorSource.Development => errors.Development.Value,
        ErrorSource.Timing => errors.Timing.Value,
        ErrorSource.Flash => errors.Flash.Value,
        _ => 0,
    };
}
