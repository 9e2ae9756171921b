using Foramen.Engine.Camera;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Field.Components;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Bench.Strips;

/// <summary>A strip as it is planned: texts until they are read, a message beside each that cannot be.</summary>
public sealed class StripPlanForm
{
    /// <summary>What for.</summary>
    public StripPurpose Purpose { get; set; } = StripPurpose.Curve;

    /// <summary>Whether the light falls through the camera's hole; under a lamp otherwise.</summary>
    public bool ThroughHole { get; set; } = true;

    /// <summary>Meter reading of the white surface before the hole.</summary>
    public string Reading { get; set; } = "";

    /// <summary>Light on the strip under a lamp, lx.</summary>
    public string Lux { get; set; } = "";

    /// <summary>Its colour.</summary>
    public LightColour Light { get; set; } = LightColour.Noon;

    /// <summary>Seconds of the first patch.</summary>
    public string First { get; set; } = "8";

    /// <summary>Stops from patch to patch.</summary>
    public string Ratio { get; set; } = "0.5";

    /// <summary>Number of patches.</summary>
    public string Count { get; set; } = "8";

    /// <summary>How card and light are handled.</summary>
    public StripWay Way { get; set; } = StripWay.HoleAsShutter;

    /// <summary>What is wrong, by field; under the empty name what is wrong with the whole.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>Takes over the strip that is advised.</summary>
    public void Fill(StripPlan plan)
    {
        First = NumberText.Show(plan.Steps[0].Total.Seconds);
        Ratio = NumberText.Show(plan.Ratio.Value, 3);
        Count = NumberText.Show(plan.Steps.Count, 0);
    }

    /// <summary>The plan; null where something is wrong, and then <see cref="Messages"/> says what.</summary>
    public StripPlan? Plan()
    {
        Messages.Clear();
        var first = Number(nameof(First), First, 0.5, 3600, "the time of the first patch", "s");
        var ratio = Number(nameof(Ratio), Ratio, 1.0 / 6, 3, "the step from patch to patch", "stops");
        var count = Number(nameof(Count), Count, 3, StripPlan.MostSteps, "the number of patches", "");
        if (Messages.Count > 0)
        {
            return null;
        }

        try
        {
            return StripPlan.Create(Duration.FromSeconds(first), Stops.FromValue(ratio), (int)Math.Round(count), Way);
        }
        catch (RefusalException e)
        {
            Messages[""] = e.Message;
            return null;
        }
    }

    /// <summary>What to write down once it is made; null where something is wrong.</summary>
    /// <param name="strip">Its id.</param>
    /// <param name="paper">The box.</param>
    /// <param name="camera">The camera, where the light falls through its hole.</param>
    public StripMade? Read(Ulid strip, Ulid paper, PinholeCamera? camera)
    {
        if (Plan() is not { } plan)
        {
            return null;
        }

        var lux = ThroughHole
            ? Messages.Try(nameof(Reading), () => camera is null
                ? throw new RefusalException(Words.Strips.NoCamera)
                : camera.ImageIlluminance(ReadingText.Luminance(Reading, LightMeter.Usual, "the white surface"), camera.HoleOffset).Lux)
            : Number(nameof(Lux), Lux, 1e-6, 1e6, "the light on the strip", "lx");
        return Messages.Count > 0
            ? null
            : new StripMade
            {
                Strip = strip,
                Paper = paper,
                Purpose = Purpose,
                OnStripLux = lux,
                LightKelvin = Light.Temperature.Kelvin,
                Seconds = [.. plan.Steps.Select(step => step.Total.Seconds)],
                InSeveralOpenings = Way == StripWay.HoleAsShutter,
            };
    }

    private double Number(string field, string text, double min, double max, string what, string unit)
        => Messages.Try(field, () => NumberText.Read(text, min, max, what, unit));
}
