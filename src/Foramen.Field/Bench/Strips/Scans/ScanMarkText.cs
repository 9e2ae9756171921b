using Foramen.Field.Texts;

namespace Foramen.Field.Bench.Strips.Scans;

/// <summary>What a mark on a picture of a strip is called, and where to touch for it.</summary>
public static class ScanMarkText
{
    /// <summary>Its name.</summary>
    public static string NameOf(ScanMark mark) => mark switch
    {
        ScanMark.UpperLeast => Words.StripScans.Corner(1),
        ScanMark.UpperMost => Words.StripScans.Corner(2),
        ScanMark.LowerMost => Words.StripScans.Corner(3),
        ScanMark.LowerLeast => Words.StripScans.Corner(4),
        ScanMark.White => Words.StripScans.White,
        _ => Words.StripScans.Black,
    };

    /// <summary>Where to touch.</summary>
    /// <param name="mark">The mark.</param>
    /// <param name="patches">Patches of the strip.</param>
    public static string HowTo(ScanMark mark, int patches) => mark switch
    {
        ScanMark.UpperLeast => Words.StripScans.TouchUpperLeast,
        ScanMark.UpperMost => Words.StripScans.TouchUpperMost(patches),
        ScanMark.LowerMost => Words.StripScans.TouchLowerMost(patches),
        ScanMark.LowerLeast => Words.StripScans.TouchLowerLeast,
        ScanMark.White => Words.StripScans.TouchWhite,
        _ => Words.StripScans.TouchBlack,
    };
}
