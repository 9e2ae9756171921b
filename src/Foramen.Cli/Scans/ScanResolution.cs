using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Exif;

namespace Foramen.Cli.Scans;

/// <summary>How large a scan's pixels are: from a ruler in it, from what was said, or from the file, in this order of trust.</summary>
internal static class ScanResolution
{
    // Beyond this the file and the user disagree, and one of them is wrong.
    private const double Agree = 0.02;

    /// <summary>The scale, where it was taken from, and a note where things disagree.</summary>
    /// <exception cref="RefusalException">Nothing says it, or what says it is wrong.</exception>
    public static (ScanScale Scale, string From, string? Note) Of(string? ruler, double? dotsPerInch, PictureResolution? tag)
    {
        if (ruler is not null)
        {
            var (apart, from, to) = ScanPoints.Ruler(ruler);
            var scale = ScanScale.FromRuler(apart, from.DistanceTo(to));
            return (scale, "ruler", Disagreement(scale.DotsPerInch, dotsPerInch, "the ruler", "--dpi") ?? Disagreement(scale.DotsPerInch, Trusted(tag), "the ruler", "the file"));
        }

        if (dotsPerInch is { } said)
        {
            return (ScanScale.FromDotsPerInch(said), "--dpi", Disagreement(said, Trusted(tag), "--dpi", "the file"));
        }

        return tag switch
        {
            { IsPlaceholder: true } => throw new RefusalException(FormattableString.Invariant(
                $"The file says {tag.Value.Across:0} dpi, which programs write where they do not know; give the scanner's resolution, such as --dpi 4800, or a ruler.")),
            { } told when Math.Abs((told.Across / told.Down) - 1) > Agree => throw new RefusalException(FormattableString.Invariant(
                $"The file says {told.Across:0} dpi across and {told.Down:0} down; scan again with square pixels.")),
            { } told => (ScanScale.FromDotsPerInch(told.Across), told.Source, null),
            _ => throw new RefusalException(
                "Neither the file nor the command says how large a pixel is; give the scanner's resolution, such as --dpi 4800, or a ruler, such as --ruler \"10mm at 120,300 to 2120,310\"."),
        };
    }

    private static double? Trusted(PictureResolution? tag) => tag is { IsPlaceholder: false } told ? told.Across : null;

    private static string? Disagreement(double used, double? other, string usedFrom, string otherFrom)
        => other is { } said && Math.Abs((said / used) - 1) > Agree
            ? FormattableString.Invariant($"The scan has {used:0} dpi by {usedFrom} but {said:0} by {otherFrom}; {used:0} was used, and if that is wrong so is every length.")
            : null;
}
