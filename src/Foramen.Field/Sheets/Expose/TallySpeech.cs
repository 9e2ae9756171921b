using Foramen.Field.Texts;
using Foramen.Field.Time;

namespace Foramen.Field.Sheets.Expose;

/// <summary>What a screen reader hears of the tally: seldom at first, often at the end; the text changes only when something should be said.</summary>
public static class TallySpeech
{
    /// <summary>The sentence for now.</summary>
    public static string Of(TallyStanding now)
    {
        if (now.IsDone)
        {
            return Words.Expose.Done;
        }

        if (now.LeftSeconds is not { } left)
        {
            return Words.Expose.Word(Journal.Bodies.LightWord.Covered);
        }

        var step = left switch { > 120 => 60.0, > 30 => 30, > 10 => 10, _ => 5 };
        return Words.Expose.Announce(TimeText.Spoken(Math.Ceiling(left / step) * step));
    }
}
