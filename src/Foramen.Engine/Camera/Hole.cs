using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>The hole: round, in a sheet of even thickness. Immutable.</summary>
public sealed record Hole
{
    /// <summary>Relative spread of a diameter nobody has measured: 5 % (an assumption).</summary>
    public const double AssumedRelativeSd = 0.05;

    /// <summary>Thickness of the edge where nobody has said: 0.05 mm, kitchen foil sanded thin to shim stock (common practice, no source).</summary>
    public const double AssumedEdgeMillimetres = 0.05;

    private Hole(Length diameter, double relativeSd, Length edgeThickness)
    {
        Diameter = diameter;
        DiameterRelativeSd = relativeSd;
        EdgeThickness = edgeThickness;
    }

    /// <summary>Diameter, 0.02 to 50 mm.</summary>
    public Length Diameter { get; }

    /// <summary>Standard deviation of the diameter over the diameter, 0 to 0.5.</summary>
    public double DiameterRelativeSd { get; }

    /// <summary>Thickness of the material at the hole, 0 to 10 mm. A thick edge darkens the corners.</summary>
    public Length EdgeThickness { get; }

    /// <summary>Area, mm².</summary>
    public double AreaSquareMillimetres => Math.PI / 4 * Diameter.Millimetres * Diameter.Millimetres;

    /// <summary>A hole of this diameter.</summary>
    /// <param name="diameter">0.02 to 50 mm.</param>
    /// <param name="relativeSd">0 to 0.5; 0.05 where nobody has measured.</param>
    /// <param name="edgeThickness">0 to 10 mm; 0.05 mm where nobody has said.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static Hole FromDiameter(Length diameter, double relativeSd = AssumedRelativeSd, Length? edgeThickness = null)
    {
        Guard.Within(diameter.Millimetres, 0.02, 50, "the hole's diameter", "mm");
        Guard.Within(relativeSd, 0, 0.5, "the relative spread of the hole's diameter");
        var edge = edgeThickness ?? Length.FromMillimetres(AssumedEdgeMillimetres);
        Guard.Within(edge.Millimetres, 0, 10, "the thickness of the hole's edge", "mm");
        return new Hole(diameter, relativeSd, edge);
    }

    /// <summary>
    /// Part of the hole's opening that is still seen at an angle, beyond the cosine: the front and back rims, shifted by t·tan θ, overlap by
    /// (2/π)(acos q − q√(1 − q²)), q = t·tan θ/d. Plane geometry of two circles; light reflected in the edge is left out.
    /// </summary>
    /// <param name="tangent">Tangent of the angle to the hole's axis, 0 or more.</param>
    /// <returns>1 on the axis, 0 where nothing is seen through the hole.</returns>
    public double OpenPart(double tangent)
    {
        var q = EdgeThickness.Millimetres * tangent / Diameter.Millimetres;
        return q <= 0 ? 1 : q >= 1 ? 0 : 2 / Math.PI * (Math.Acos(q) - (q * Math.Sqrt(1 - (q * q))));
    }
}
