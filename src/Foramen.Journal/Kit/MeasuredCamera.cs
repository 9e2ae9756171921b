using Foramen.Engine.Camera;

namespace Foramen.Journal.Kit;

/// <summary>A camera's description after something about it was measured.</summary>
public static class MeasuredCamera
{
    /// <summary>The description with the hole as measured, its spread included.</summary>
    public static CameraDefinition WithHole(this CameraDefinition camera, HoleMeasurement measured)
        => camera.WithHole(measured.Diameter.Millimetres, measured.DiameterSd.Millimetres);

    /// <summary>The description with a hole of this diameter and standard deviation, mm.</summary>
    internal static CameraDefinition WithHole(this CameraDefinition camera, double diameterMillimetres, double sdMillimetres)
        => camera with { HoleDiameterMillimetres = diameterMillimetres, HoleDiameterRelativeSd = sdMillimetres / diameterMillimetres };
}
