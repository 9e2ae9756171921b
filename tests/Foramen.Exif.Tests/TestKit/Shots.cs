using Foramen.Engine.Scene;

namespace Foramen.Exif.Tests.TestKit;

/// <summary>Files that hold nothing but what a test puts in.</summary>
public static class Shots
{
    /// <summary>What the reader makes of one value in the Exif IFD.</summary>
    public static PhotographFacts FactsOf(ushort tag, ExifValue value) => FactsOf(new ExifWriter().Exif(tag, value));

    /// <summary>What the reader makes of this Exif.</summary>
    public static PhotographFacts FactsOf(ExifWriter exif) => PhotographFactsReader.Read(JpegBytes.Only(exif.Segment()));
}
