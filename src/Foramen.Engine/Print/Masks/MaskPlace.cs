using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>Where a mask lies in the light: in a tray before the paper, or before the hole, outside. Flat paper only. Immutable.</summary>
public sealed record MaskPlace
{
    private MaskPlace(bool isBeforeHole, Length distance) => (IsBeforeHole, Distance) = (isBeforeHole, distance);

    /// <summary>Whether it is outside, before the hole.</summary>
    public bool IsBeforeHole { get; }

    /// <summary>From the paper towards the hole for a tray; from the hole towards the subject otherwise.</summary>
    public Length Distance { get; }

    /// <summary>In a tray so far before the paper; 0 lies on the paper.</summary>
    /// <exception cref="RefusalException">More than 10 m.</exception>
    public static MaskPlace InTray(Length fromPaper)
    {
        Guard.Within(fromPaper.Millimetres, 0, 10_000, "the distance from the mask to the paper", "mm");
        return new MaskPlace(false, fromPaper);
    }

    /// <summary>Outside, so far before the hole.</summary>
    /// <exception cref="RefusalException">Not 0.5 mm to 10 m.</exception>
    public static MaskPlace BeforeHole(Length fromHole)
    {
        Guard.Within(fromHole.Millimetres, 0.5, 10_000, "the distance from the hole to the mask", "mm");
        return new MaskPlace(true, fromHole);
    }

    /// <summary>
    /// Size of the mask over the size of its shadow on the paper, by similar triangles with the hole as their tip: (f − z)/f in a tray, a/f before the hole.
    /// </summary>
    /// <exception cref="RefusalException">Curved paper, or a tray beyond the hole.</exception>
    public double ScaleIn(PinholeCamera camera)
    {
        Check(camera);
        var focal = camera.FocalDistance.Millimetres;
        return IsBeforeHole ? Distance.Millimetres / focal : (focal - Distance.Millimetres) / focal;
    }

    /// <summary>
    /// Width of the shadow's soft edge: the hole seen past the mask's edge, d·z/(f − z) in a tray, d·(f + a)/a before the hole. Diffraction is left out.
    /// </summary>
    /// <exception cref="RefusalException">As for <see cref="ScaleIn"/>.</exception>
    public Length PenumbraIn(PinholeCamera camera)
    {
        Check(camera);
        var (focal, hole, distance) = (camera.FocalDistance.Millimetres, camera.Hole.Diameter.Millimetres, Distance.Millimetres);
        return Length.FromMillimetres(IsBeforeHole ? hole * (focal + distance) / distance : hole * distance / (focal - distance));
    }

    private void Check(PinholeCamera camera)
    {
        if (camera.Shape.WallRadius is not null)
        {
            throw new RefusalException("Masks are worked out for flat paper; this camera's paper is curved.");
        }

        if (!IsBeforeHole && Distance.Millimetres > 0.95 * camera.FocalDistance.Millimetres)
        {
            throw new RefusalException(FormattableString.Invariant(
                $"The tray is {Distance.Millimetres:0.#} mm before the paper and the hole only {camera.FocalDistance.Millimetres:0.#} mm; put it nearer to the paper than {0.95 * camera.FocalDistance.Millimetres:0.#} mm."));
        }
    }
}
