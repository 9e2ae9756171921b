using Foramen.Journal.Bodies;

namespace Foramen.Field.Sheets.Expose;

/// <summary>
/// How much darker than sun each word for the light is: thin cloud one stop, cloud two. Common practice of printed exposure guides (weak shadows,
/// no shadows), no better source; a reading says more.
/// </summary>
/// <remarks>Limit: cloud dims what the sun lights; open shade hardly changes.</remarks>
public static class LightSteps
{
    /// <summary>The words that may be said with one touch, brightest first.</summary>
    public static IReadOnlyList<LightWord> OneTouch { get; } = [LightWord.Sun, LightWord.ThinCloud, LightWord.Cloud, LightWord.Covered];

    /// <summary>Stops below sun.</summary>
    public static double BelowSun(LightWord word) => word switch
    {
        LightWord.ThinCloud => 1,
        LightWord.Cloud => 2,
        _ => 0,
    };

    /// <summary>The light of a word against the metered light, stops.</summary>
    /// <param name="word">The light now.</param>
    /// <param name="metered">The light when the tones were metered.</param>
    public static double Against(LightWord word, LightWord metered) => BelowSun(metered) - BelowSun(word);
}
