using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Exposure.Motion;

/// <summary>A paper without toe or shoulder, so that formulas for one slope can be checked: density 1 at one lux second.</summary>
internal sealed class StraightCurve(double slope) : CharacteristicCurve
{
    public override PaperKind Kind => slope > 0 ? PaperKind.NegativeWorking : PaperKind.DirectPositive;

    public override Density MinimumDensity => Density.FromValue(0);

    public override Density MaximumDensity => Density.FromValue(4);

    public static PaperResponse Response(double slope, double exponent) => PaperResponse.Of(
        new PhotographicPaper
        {
            Name = "straight",
            Curve = new StraightCurve(slope),
            Sensitivity = PaperSensitivity.BlueSensitive,
            Failure = SchwarzschildFailure.FromExponent(exponent),
            SpeedFoundIn = LightColour.Noon,
            SpeedFoundAt = Duration.FromSeconds(120),
        },
        LightColour.Noon);

    public override double DensityAtLg(double lgExposure) => Math.Clamp(1.5 + (slope * lgExposure), 0, 4);

    public override double SlopeAtLg(double lgExposure) => slope;

    public override CharacteristicCurve Faster(Stops stops) => this;

    protected override double LgExposureFor(double density) => (density - 1.5) / slope;
}
