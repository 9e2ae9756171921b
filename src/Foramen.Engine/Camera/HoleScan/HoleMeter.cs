using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>Measures a hole on a scan or a macro photograph: finds it, fits its edge to a fraction of a pixel, and says how well that is known.</summary>
/// <remarks>
/// Holds for a plate square to the view, a hole of which the inside is even, and codes of a known encoding: read as the wrong one, the edge moves by up to 0.8 of the
/// blur. Light reflected in a thick edge counts as hole.
/// </remarks>
public static class HoleMeter
{
    // What the model leaves out (pixel shape, second-order curvature), on the radius; from rendered holes, see the tests.
    private const double ModelSdPixels = 0.02;

    // A clipped plateau hides how bright the hole is, and with it the half-way level; the part of the blur by which the edge may then be off.
    private const double ClippedPartOfBlur = 0.25;

    private const double WellResolved = 20;
    private const int OutlinePoints = 180;

    /// <summary>Measures the hole.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="scale">How large its pixels are.</param>
    /// <param name="shouldBeAt">Where the hole should be, such as the middle between two marks on the plate.</param>
    /// <exception cref="RefusalException">No hole, cut by the border, too small, nothing round, or an edge that cannot be told.</exception>
    public static HoleMeasurement Measure(ScanImage scan, ScanScale scale, PixelPoint? shouldBeAt = null)
    {
        var found = HoleFinder.Find(scan);
        var fit = EdgeFit.Of(scan, found.Hole);
        var outline = HoleOutline.Of(fit);
        var model = fit.Model;
        var radius = Math.Sqrt(outline.Area / Math.PI);
        if (2 * radius < HoleFinder.LeastDiameter)
        {
            throw HoleFinder.TooSmall(2 * radius);
        }

        if (Math.Abs(radius - (found.Hole.Diameter / 2)) > Math.Max(3, 0.25 * radius))
        {
            throw new RefusalException("The hole's edge cannot be followed all around; clean the plate and scan it again in focus.");
        }

        var clipped = IsClipped(fit);
        var radiusSd = Math.Sqrt(
            (fit.RadiusSd * fit.RadiusSd)
            + (outline.Left.Average(part => part * part) / outline.Left.Count)
            + (ModelSdPixels * ModelSdPixels)
            + (clipped ? Math.Pow(ClippedPartOfBlur * model.Sigma, 2) : 0));
        var perPixel = scale.MillimetresPerPixel;
        var diameter = 2 * radius * perPixel;
        Length Mm(double pixels) => Length.FromMillimetres(pixels * perPixel);
        var (least, most) = outline.Feret();
        return new HoleMeasurement
        {
            Diameter = Length.FromMillimetres(diameter),
            DiameterSd = Length.FromMillimetres(double.Hypot(2 * radiusSd * perPixel, diameter * scale.RelativeSd)),
            LeastWidth = Mm(least),
            MostWidth = Mm(most),
            RoundnessDeviation = Mm(outline.RadiusRange()),
            Burr = Mm(Math.Max(0, -outline.Left.Min())),
            Notch = Mm(Math.Max(0, outline.Left.Max())),
            Middle = PixelPoint.At(model.X, model.Y),
            Outline = outline.Points(OutlinePoints),
            BlurPixels = model.Sigma,
            DiameterPixels = 2 * radius,
            IsBright = model.Contrast > 0,
            Offset = shouldBeAt is { } place ? ((model.X - place.X) * perPixel, (place.Y - model.Y) * perPixel) : null,
            Doubts = Doubts(found, radius, clipped),
        };
    }

    private static bool IsClipped(EdgeFit fit)
    {
        // Of a band with the edge in its middle nearly half is plateau on either side; a sharp black-and-white scan has nothing between and loses nothing.
        const double ClippedBand = 0.25;
        return fit.Pixels.ClippedPart > ClippedBand && fit.Model.Sigma > 0.4;
    }

    private static List<string> Doubts(HoleFinder.Finding found, double radius, bool clipped)
    {
        var doubts = new List<string>();
        if (found.Rival is { } rival)
        {
            doubts.Add(FormattableString.Invariant(
                $"There is a second round spot, {rival.Diameter:0} pixels across at {rival.X:0},{rival.Y:0}; the larger one was measured, so crop the scan if the hole is the other."));
        }
        else if (found.Others > 0)
        {
            doubts.Add(found.Others == 1 ? "One smaller or ragged spot was taken for dust." : $"{found.Others} smaller or ragged spots were taken for dust.");
        }

        if (2 * radius < WellResolved)
        {
            doubts.Add(FormattableString.Invariant($"The hole is only {2 * radius:0.0} pixels across; {WellResolved:0} or more measure it well."));
        }

        if (clipped)
        {
            doubts.Add("The scan is clipped to full black or white at the hole, which hides where half-way is; scan with less exposure or contrast.");
        }

        return doubts;
    }
}
