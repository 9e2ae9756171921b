using Foramen.Field.Sheets.Process;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Sheets.Process;

public sealed class BathCuesTests
{
    /// <summary>
    /// Common practice, no source: the developer moved for 10 s and then 3 s every 10 s; stop bath without pause; fixer moved for 30 s and then
    /// 5 s every 30 s.
    /// </summary>
    [Theory]
    [InlineData(BathKind.Developer, 0, AgitationAction.Move, 10)]
    [InlineData(BathKind.Developer, 9.5, AgitationAction.Move, 0.5)]
    [InlineData(BathKind.Developer, 10, AgitationAction.Rest, 10)]
    [InlineData(BathKind.Developer, 20, AgitationAction.Move, 3)]
    [InlineData(BathKind.Developer, 25, AgitationAction.Rest, 5)]
    [InlineData(BathKind.Stop, 13, AgitationAction.Move, 62)]
    [InlineData(BathKind.Rinse, 74, AgitationAction.Move, 1)]
    [InlineData(BathKind.Fix, 35, AgitationAction.Rest, 25)]
    [InlineData(BathKind.Fix, 61, AgitationAction.Move, 4)]
    [InlineData(BathKind.Developer, 75, AgitationAction.Drain, 0)]
    [InlineData(BathKind.Fix, 500, AgitationAction.Drain, 0)]
    public void The_hand_moves_by_the_rhythm_of_the_bath(BathKind bath, double elapsed, AgitationAction action, double left)
        => Assert.Equal(new AgitationCue(action, left), BathCues.At(bath, elapsed, 75));

    /// <summary>US War Department, TM 11-2323: “2 min in each of three or four changes”; so fresh water at 2, 4 and 6 min of eight.</summary>
    [Fact]
    public void Four_changes_of_wash_water_are_two_minutes_each()
    {
        Assert.Equal([120, 240, 360], BathCues.Starts(BathKind.Wash, 480));
        Assert.Equal(AgitationAction.Move, BathCues.At(BathKind.Wash, 0, 480).Action);
        Assert.Equal(AgitationAction.FreshWater, BathCues.At(BathKind.Wash, 121, 480).Action);
        Assert.Equal(new AgitationCue(AgitationAction.Rest, 10), BathCues.At(BathKind.Wash, 130, 480));
    }

    [Theory]
    [InlineData(BathKind.Developer)]
    [InlineData(BathKind.Stop)]
    [InlineData(BathKind.Fix)]
    [InlineData(BathKind.Wash)]
    public void A_cue_holds_until_it_says_it_ends_and_never_beyond_the_bath(BathKind bath)
    {
        for (var elapsed = 0.0; elapsed < 200; elapsed += 0.25)
        {
            var cue = BathCues.At(bath, elapsed, 200);
            Assert.InRange(cue.SecondsLeft, 0.001, 200 - elapsed);
            Assert.Equal(cue.Action, BathCues.At(bath, elapsed + (cue.SecondsLeft * 0.999), 200).Action);
            Assert.NotEqual(cue.Action, BathCues.At(bath, elapsed + cue.SecondsLeft, 200).Action);
        }
    }
}
