namespace Foramen.Imaging;

/// <summary>How much a file may ask for before it is refused unread.</summary>
/// <param name="MostMegapixels">Most pixels, millions, as the header declares them.</param>
/// <param name="MostBytes">Largest file, bytes.</param>
public sealed record DecodeLimits(double MostMegapixels, long MostBytes)
{
    /// <summary>120 megapixels and 200 MB: more than any phone makes, less than would hurt.</summary>
    public static DecodeLimits Usual { get; } = new(120, 200_000_000);
}
