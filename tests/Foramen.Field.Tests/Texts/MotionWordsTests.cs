using Foramen.Field.Texts;

namespace Foramen.Field.Tests.Texts;

public sealed class MotionWordsTests
{
    [Fact]
    public void Each_way_to_hide_what_passes_is_named_and_a_way_that_is_none_is_not()
    {
        Assert.Equal(
            "Not seen from 1 min on, with a hole of 2 mm. Or cover the hole for 4 s while they pass. Or flash to 40\u00A0% of the first visible tone.", Words.Motions.HideBy(60, 2, 3.2, 0.4));
        Assert.Equal("Not seen from 1 min on.", Words.Motions.HideBy(60, null, 0.2, 0));
        Assert.Equal("", Words.Motions.HideBy(null, null, null, null));
    }
}
