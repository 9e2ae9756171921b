using Foramen.Engine.Scene;
using Foramen.Exif.Tests.TestKit;

namespace Foramen.Exif.Tests.PublishedValues;

/// <summary>Colour spaces by the primaries of embedded ICC profiles (ICC.1:2010, tags rXYZ, gXYZ, bXYZ) and, failing those, by their names.</summary>
[Source("icc-1-2010", "tags rXYZ, gXYZ, bXYZ")]
public sealed class ColourProfileTests
{
    public static TheoryData<string, double[], PhotographColour, bool> Profiles => new()
    {
        { "sRGB IEC61966-2.1", ProfileBytes.SrgbColumns, PhotographColour.Srgb, false },
        { "Display P3", ProfileBytes.DisplayP3Columns, PhotographColour.DisplayP3, false },
        { "Display P3", [], PhotographColour.DisplayP3, false },
        { "sRGB", [], PhotographColour.Srgb, false },

        // Many programs give their profiles names of their own; what the colours are decides.
        { "8a2f", ProfileBytes.SrgbColumns, PhotographColour.Srgb, false },
        { "8a2f", ProfileBytes.DisplayP3Columns, PhotographColour.DisplayP3, false },
        { "wide", ProfileBytes.WideColumns, PhotographColour.Srgb, true },
        { "not Display P3 at all", ProfileBytes.WideColumns, PhotographColour.Srgb, true },
        { "8a2f", [], PhotographColour.Srgb, true },
    };

    [Theory]
    [MemberData(nameof(Profiles))]
    public void The_profile_tells_the_colours(string name, double[] columns, PhotographColour colour, bool doubted)
    {
        var facts = PhotographFactsReader.Read(JpegBytes.Only(JpegBytes.ProfileSegment(ProfileBytes.With(name, columns))));

        Assert.Equal(colour, facts.Colour);
        Assert.Equal(doubted, facts.Doubts.Any(doubt => doubt.Contains("profile", StringComparison.Ordinal)));
    }

    [Fact]
    [OwnRule]
    public void A_tone_curve_unlike_that_of_sRGB_is_doubted()
    {
        static bool Doubted(byte[] curve) => PhotographFactsReader.Read(JpegBytes.Only(JpegBytes.ProfileSegment(
            ProfileBytes.With("sRGB", ProfileBytes.SrgbColumns, curve)))).Doubts.Any(doubt => doubt.Contains("tone curve", StringComparison.Ordinal));

        Assert.False(Doubted(ProfileBytes.SrgbCurve()));
        Assert.False(Doubted(ProfileBytes.Power(2.2)));
        Assert.True(Doubted(ProfileBytes.Power(1.0)));
        Assert.True(Doubted(ProfileBytes.Power(1.45)));
        Assert.True(Doubted([.. "curv"u8, 0, 0, 0, 0, 0, 0, 0, 0]));
    }

    [Fact]
    public void A_profile_in_parts_is_put_together_in_their_order()
    {
        var profile = ProfileBytes.With("8a2f", ProfileBytes.DisplayP3Columns);
        byte[] Part(byte number, Range range) => JpegBytes.Segment(0xE2, [.. "ICC_PROFILE\0"u8, number, 2, .. profile[range]]);

        Assert.Equal(PhotographColour.DisplayP3, PhotographFactsReader.Read(JpegBytes.Only(Part(2, 150..), Part(1, ..150))).Colour);
    }

    [Fact]
    [Source("exif-2.3", "tag 0xA001")]
    public void Without_a_profile_colours_are_sRGB()
    {
        // Exif 2.3, tag 0xA001: 1 is sRGB.
        var facts = Shots.FactsOf(ExifTag.ColorSpace, ExifValue.Word(1));
        Assert.Equal(PhotographColour.Srgb, facts.Colour);
        Assert.Empty(facts.Doubts);
    }
}
