using Foramen.Engine.Camera;

namespace Foramen.Journal.Kit;

/// <summary>A camera's description after something about it was measured.</summary>
public static class MeasuredCamera
{
    // The Engine knows no wider spread; a wider one says as little.
    private const double LargestRelativeSd = 0.5;

    /// <summary>The description with the hole as measured, its spread included.</summary>
    public static CameraDefinition WithHole(this CameraDefinition camera, HoleMeasurement measured)
        => camera.WithHole(measured.Diameter.Millimetres, measured.DiameterSd.Millimetres);

    /// <summary>The description with a hole of this diameter and standard deviation, mm.</summary>
    internal static CameraDefinition WithHole(this CameraDefinition camera, double diameterMillimetres, double sdMillimetres)
        => camera with { HoleDiameterMillimetres = diameterMillimetres, HoleDiameterRelativeSd = Math.Min(LargestRelativeSd, sdMillimetres / diameterMillimetres) };

    /// <summary>The description with the focal distance as measured, its spread included.</summary>
    public static CameraDefinition WithChamber(this CameraDefinition camera, ChamberMeasurement measured)
        => camera with { FocalDistanceMillimetres = measured.FocalDistance.Millimetres, FocalDistanceRelativeSd = measured.RelativeSd };

    /// <summary>The description with this focal distance and standard deviation, mm.</summary>
    internal static CameraDefinition WithChamber(this CameraDefinition camera, double focalMillimetres, double sdMillimetres)
        => camera with { FocalDistanceMillimetres = focalMillimetres, FocalDistanceRelativeSd = Math.Min(LargestRelativeSd, sdMillimetres / focalMillimetres) };
}
