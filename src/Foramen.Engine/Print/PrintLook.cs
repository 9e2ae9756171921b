using Foramen.Engine.Quantities;

namespace Foramen.Engine.Print;

/// <summary>How a predicted print is shown. Immutable.</summary>
public sealed record PrintLook
{
    private readonly Length border;

    /// <summary>The sheet as processed, or the positive.</summary>
    public PrintSide Side { get; init; } = PrintSide.Positive;

    /// <summary>Width of the rim where the sheet is held and no light falls; none where missing.</summary>
    /// <exception cref="RefusalException">More than 200 mm.</exception>
    public Length Border
    {
        get => border;
        init => border = Length.FromMillimetres(Guard.Within(value.Millimetres, 0, 200, "the border's width", "mm"));
    }

    /// <summary>
    /// Whether left and right change places against the subject. A direct positive in the hand does (see <see cref="PrintMask"/>); the usual is the subject as it
    /// stood, for comparing.
    /// </summary>
    public bool IsMirrored { get; init; }

    /// <summary>
    /// Whether white on the screen is the paper's own white, as an eye that has settled on the print sees it, rather than a perfect diffuser, of which
    /// paper falls a little short.
    /// </summary>
    public bool WhiteIsPaper { get; init; }
}
