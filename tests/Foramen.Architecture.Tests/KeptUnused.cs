namespace Foramen.Architecture.Tests;

/// <summary>What no program reaches and stays all the same.</summary>
internal static class KeptUnused
{
    private const string Checked = "Published values are checked by it.";
    private const string Measured = "bench measures it against a peer.";
    private const string OtherWay = "The way back, or a unit of the trade, beside one that is used.";
    private const string Seen = "Tests see by it, from outside, what the product uses inside.";

    /// <summary>Why, by the name that <see cref="UnusedMembers"/> gives.</summary>
    public static IReadOnlyDictionary<string, string> Reasons { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["Foramen.Engine.Bath.WashPlan.Time"] = Checked,
        ["Foramen.Engine.Bath.WashingOut.FromLayer(Length, Double)"] = Checked,
        ["Foramen.Engine.Camera.PaperLight.Monochromatic(Double)"] = Checked,
        ["Foramen.Engine.Camera.SharpnessCriterion.SmallestSpot(Double)"] = Checked,
        ["Foramen.Engine.Light.CieGeneralSky.OfNumber(Int32)"] = Checked,
        ["Foramen.Engine.Light.CieGeneralSky.RelativeLuminance(Angle, Angle, Angle)"] = Checked,
        ["Foramen.Engine.Light.CieGeneralSky.Types"] = Checked,
        ["Foramen.Engine.Light.Daylight.D50"] = Checked,
        ["Foramen.Engine.Light.Daylight.D75"] = Checked,
        ["Foramen.Engine.Light.EquatorialVector.Declination"] = Checked,
        ["Foramen.Engine.Light.LightMeter.LuminanceOfCard(Illuminance, Reflectance)"] = Checked,
        ["Foramen.Engine.Light.LightMeter.MeteredTime(Luminance, FNumber, CameraSpeed)"] = Checked,
        ["Foramen.Engine.Light.LightMeter.MidTone(IncidentReceptor)"] = Checked,
        ["Foramen.Engine.Light.MeterConstants.WithFourteen"] = Checked,
        ["Foramen.Engine.Light.SkyCover.SpreadAs(CieGeneralSky)"] = Checked,
        ["Foramen.Engine.Light.SkyLight.DirectNormal"] = Checked,
        ["Foramen.Engine.Light.SkyLight.GlobalHorizontal"] = Checked,
        ["Foramen.Engine.Light.SkyLight.LuminanceAt(Angle, Angle)"] = Checked,
        ["Foramen.Engine.Light.SkyLight.ZenithLuminance"] = Checked,
        ["Foramen.Engine.Light.Sun.Declination(DateTimeOffset)"] = Checked,
        ["Foramen.Engine.Light.SunTrack.At(DateTimeOffset, GeographicPosition, Atmosphere)"] = Checked,
        ["Foramen.Engine.Paper.ExposureIndex.At(Duration, FailureLaw)"] = Checked,
        ["Foramen.Engine.Paper.IsoPaperSpeed.ExposureIndexInSameLight(MeterConstants)"] = Checked,
        ["Foramen.Engine.Scene.RgbSpace.ToLinearSrgb(PhotographColour, Double, Double, Double)"] = Checked,
        ["Foramen.Engine.Scene.RgbSpace.ToXyz(PhotographColour)"] = Checked,
        ["Foramen.Engine.Light.SunTrack.Fill(DateTimeOffset, TimeSpan, GeographicPosition, Span`1, Atmosphere)"] = Measured,
        ["Foramen.Engine.Print.KernelConvolution.Apply(ReadOnlyMemory`1, Int32, Int32, HoleImageKernel, Memory`1, ReadOnlyMemory`1, CancellationToken)"] = Measured,
        ["Foramen.Engine.Print.SheetImage.PhotographLongSide(SheetProjection, Int32)"] = Measured,
        ["Foramen.Engine.Quantities.Area.FromSquareCentimetres(Double)"] = OtherWay,
        ["Foramen.Engine.Quantities.Density.FromReflectance(Reflectance)"] = OtherWay,
        ["Foramen.Engine.Quantities.MotionSpeed.FromKilometresPerHour(Double)"] = OtherWay,
        ["Foramen.Engine.Quantities.Reflectance.FromDensity(Density)"] = OtherWay,
        ["Foramen.Engine.Quantities.Temperature.Kelvin"] = OtherWay,
        ["Foramen.Engine.Quantities.Volume.FromLitres(Double)"] = OtherWay,
        ["Foramen.Engine.Bath.DeveloperBottle.AdditiveActivity"] = Seen,
        ["Foramen.Engine.Bath.DeveloperBottle.MultiplicativeActivity"] = Seen,
        ["Foramen.Engine.Camera.PointSpread.ComputedRadius"] = Seen,
        ["Foramen.Engine.Camera.SheetPoint.Middle"] = Seen,
        ["Foramen.Engine.Exposure.MotionOnPaper.LeastShareSeen(Double, Boolean, Boolean)"] = Seen,
        ["Foramen.Engine.Paper.StripAdvice.Next(IReadOnlyList`1, PaperKind, PaperSensitivity, StripGoal, StripPrior)"] = Seen,
        ["Foramen.Engine.Paper.StripFit.ToPaper(String)"] = Seen,
        ["Foramen.Engine.Scene.LuminanceMap.FromValues(Int32, Int32, ReadOnlySpan`1)"] = Seen,
        ["Foramen.Engine.Scene.LuminanceMap.Limits"] = Seen,
        ["Foramen.Engine.Scene.LuminanceMap.Values"] = Seen,
        ["Foramen.Engine.Scene.Tone.ActinicLuminance"] = Seen,
        ["Foramen.Journal.Ulid.UnixMilliseconds"] = Seen,
    };
}
