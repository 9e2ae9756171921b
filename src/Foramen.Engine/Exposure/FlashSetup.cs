using Foramen.Engine.Quantities;

namespace Foramen.Engine.Exposure;

/// <summary>How a flash is given: the light that an even surface puts on the middle of the sheet while it fills the hole's view, or no flash at all.</summary>
/// <remarks>
/// "Ten seconds at something white" may be a third of the threshold in shade and past it in sun, so the surface is always metered (or stated
/// as an assumption) and never taken for granted.
/// </remarks>
public sealed record FlashSetup
{
    private FlashSetup(Illuminance onSheet, bool throughHole)
    {
        OnSheet = onSheet;
        ThroughHole = throughHole;
    }

    /// <summary>No flash is possible or wanted.</summary>
    public static FlashSetup None { get; } = new(default, true);

    /// <summary>Light on the middle of the sheet while the flash is given, as a meter would count it.</summary>
    public Illuminance OnSheet { get; }

    /// <summary>Whether it comes through the hole and so falls off towards the corners as the image does.</summary>
    public bool ThroughHole { get; }

    /// <summary>Whether a flash can be given at all.</summary>
    public bool IsPossible => OnSheet.Lux > 0;

    /// <summary>A flash through the hole at an even surface that fills its view.</summary>
    /// <param name="surfaceOnSheet">What the surface's luminance puts on the middle of the sheet.</param>
    public static FlashSetup AtSurface(Illuminance surfaceOnSheet) => new(surfaceOnSheet, true);

    /// <summary>A flash given to the open sheet, evenly.</summary>
    /// <param name="onSheet">Illuminance on the sheet.</param>
    public static FlashSetup OpenSheet(Illuminance onSheet) => new(onSheet, false);
}
