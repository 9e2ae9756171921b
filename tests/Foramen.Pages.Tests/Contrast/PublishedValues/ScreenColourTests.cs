using Foramen.Pages.Contrast;

namespace Foramen.Pages.Tests.Contrast.PublishedValues;

/// <summary>The contrast ratio of WCAG 2.2.</summary>
[Source("wcag-2.2", "contrast ratio, relative luminance", Basis.Memory)]
public class ScreenColourTests
{
    // "Contrast ratios can range from 1 to 21 (commonly written 1:1 to 21:1)."
    [Theory]
    [InlineData("#000", "#fff", 21)]
    [InlineData("#ffffff", "#ffffff", 1)]
    [InlineData("#000000", "#000000", 1)]
    public void The_ends_are_one_and_twenty_one(string one, string other, double ratio)
        => Assert.Equal(ratio, ScreenColour.Parse(one).ContrastWith(ScreenColour.Parse(other)), 12);

    // The weights of the three parts, for colours with one part alone: relative luminance of pure red, green and blue.
    [Theory]
    [InlineData("#ff0000", 0.2126)]
    [InlineData("#00ff00", 0.7152)]
    [InlineData("#0000ff", 0.0722)]
    public void A_pure_part_has_its_weight(string colour, double luminance) => Assert.Equal(luminance, ScreenColour.Parse(colour).Luminance, 12);

    // Understanding 1.4.3: grey of 46.7 % (#777777) on white has 4.47:1 and does not meet 4.5:1; one step darker does.
    [Theory]
    [InlineData("#777777", 4.47)]
    [InlineData("#767676", 4.54)]
    public void Greys_about_the_threshold(string grey, double ratio) => Assert.Equal(ratio, ScreenColour.Parse(grey).ContrastWith(ScreenColour.Parse("#fff")), 0.01);
}
