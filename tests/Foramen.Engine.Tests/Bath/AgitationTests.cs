using CsCheck;
using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath;

public class AgitationTests
{
    // Common practice, no source: development moves for 10 s, then at 20, 30, … s for 3 s; the stop bath all the time; the fixer for 30 s, then 5 s every 30 s.
    [Theory]
    [InlineData(ProcessingBath.Developer, 0, true, 10)]
    [InlineData(ProcessingBath.Developer, 9.5, true, 0.5)]
    [InlineData(ProcessingBath.Developer, 10, false, 10)]
    [InlineData(ProcessingBath.Developer, 19, false, 1)]
    [InlineData(ProcessingBath.Developer, 20, true, 3)]
    [InlineData(ProcessingBath.Developer, 23, false, 7)]
    [InlineData(ProcessingBath.Developer, 41, true, 2)]
    [InlineData(ProcessingBath.Stop, 15, true, Duration.Max)]
    [InlineData(ProcessingBath.Rinse, 0, true, Duration.Max)]
    [InlineData(ProcessingBath.Fix, 29, true, 1)]
    [InlineData(ProcessingBath.Fix, 30, false, 30)]
    [InlineData(ProcessingBath.Fix, 62, true, 3)]
    [InlineData(ProcessingBath.Wash, 12, false, 8)]
    [Source("common-practice")]
    public void The_usual_rhythm(ProcessingBath bath, double elapsed, bool move, double goesOn)
    {
        var (moves, lasts) = Agitation.Usual(bath).At(S(elapsed));
        Assert.Equal(move, moves);
        Assert.Equal(goesOn, lasts.Seconds, 1e-9);
    }

    [Fact]
    public void A_cue_holds_until_it_says_and_no_longer() => Gen.Select(Gen.OneOf(Gen.Const(ProcessingBath.Developer), Gen.Const(ProcessingBath.Fix)), Gen.Double[0, 500], Gen.Double[0, 0.999])
        .Sample((bath, elapsed, part) =>
        {
            var rhythm = Agitation.Usual(bath);
            var (move, goesOn) = rhythm.At(S(elapsed));
            Assert.Equal(move, rhythm.At(S(elapsed + (goesOn.Seconds * part))).Move);

            // The rest after the first agitation is one interval long, a rest between strokes ends with a stroke.
            Assert.NotEqual(move, rhythm.At(S(elapsed + goesOn.Seconds + 1e-6)).Move);
        });

    [Fact]
    public void Absurd_rhythms_are_refused()
    {
        Assert.Throws<RefusalException>(() => Agitation.From(S(10), S(10), S(11)));
        Assert.Throws<RefusalException>(() => Agitation.From(S(10), S(0), S(0)));
        Assert.Throws<RefusalException>(() => Agitation.From(S(3601), S(10), S(3)));
    }
}
