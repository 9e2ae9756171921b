using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Learning.LearningExamples;

namespace Foramen.Engine.Tests.Learning;

public class EvidenceChecksTests
{
    public static TheoryData<string, Func<double, Evidence>, double, double> Bounds { get; } = new()
    {
        { "The doublings of time is {0}; it should be between -30 and 30.", value => One with { Doublings = value }, -30, 30 },
        { "The sheets in the bottle is {0}; it should be between 0 and 10000.", value => One with { SheetsInBottle = value }, 0, 10_000 },
        { "The spread of the label's speed is {0} stops; it should be between 0 and 5 stops.", value => One with { LabelSpread = Stops.FromValue(value) }, 0, 5 },
        {
            "The spread of the label's failure is {0} stops a doubling; it should be between 0 and 1 stops a doubling.",
            value => One with { FailureSpread = Stops.FromValue(value) }, 0, 1
        },
        { "The scatter of a sheet is {0} stops; it should be between 0.01 and 5 stops.", value => One with { Scatter = Stops.FromValue(value) }, 0.01, 5 },
        { "What was foretold of a tone is {0} stops; it should be between -40 and 40 stops.", value => Of(Wall with { Foretold = Stops.FromValue(value) }), -40, 40 },
        { "What was seen of a tone is {0} stops; it should be between -40 and 40 stops.", value => Of(Wall with { Seen = Stops.FromValue(value) }), -40, 40 },
        { "The spread of a judgement is {0} stops; it should be between 0.01 and 5 stops.", value => Of(Wall with { Spread = Stops.FromValue(value) }), 0.01, 5 },
        { "The flash's part of a tone is {0}; it should be between 0 and 1.", value => Of(Wall with { FlashShare = value }), 0, 1 },
    };

    private static ToneEvidence Wall => Tone(0, 0.3);

    private static Evidence One => Sheet("a", 0);

    [Theory]
    [MemberData(nameof(Bounds))]
    internal void Each_number_is_taken_up_to_its_bounds_and_refused_beyond_them(string sentence, Func<double, Evidence> make, double least, double most)
    {
        make(least).Check();
        make(most).Check();
        foreach (var beyond in new[] { least - 0.005, most + 0.005 })
        {
            var refusal = Assert.Throws<RefusalException>(() => Beliefs.From([make(beyond)], Now));
            Assert.Equal(string.Format(System.Globalization.CultureInfo.InvariantCulture, sentence, beyond), refusal.Message);
        }
    }

    [Fact]
    public void Evidence_of_which_no_label_says_anything_is_taken() => (One with { LabelSpread = null, FailureSpread = null }).Check();

    private static Evidence Of(ToneEvidence tone) => One with { Tones = [tone] };
}
