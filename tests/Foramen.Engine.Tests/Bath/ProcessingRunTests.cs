using CsCheck;
using Foramen.Engine.Bath;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath;

public class ProcessingRunTests
{
    private static readonly DateTimeOffset Start = new(2025, 5, 4, 9, 30, 0, TimeSpan.FromHours(2));

    private static readonly ProcessingPlan Plan = ProcessingPlan.Usual(S(75));

    // Common practice, no source: the whole usual run. Development moves for 10 s, then at 20, 30, … s for 3 s; 5 s of pouring out.
    [Theory]
    [InlineData(0, 0, RunCue.Agitate, 10, "Tilt the box; 75 s left.")]
    [InlineData(9.5, 0, RunCue.Agitate, 0.5, "Tilt the box; 66 s left.")]
    [InlineData(10, 0, RunCue.Still, 10, "Leave it still; 65 s left.")]
    [InlineData(19, 0, RunCue.Still, 1, "Leave it still; 56 s left.")]
    [InlineData(20, 0, RunCue.Agitate, 3, "Tilt the box; 55 s left.")]
    [InlineData(23, 0, RunCue.Still, 7, "Leave it still; 52 s left.")]
    [InlineData(41, 0, RunCue.Agitate, 2, "Tilt the box; 34 s left.")]
    [InlineData(69, 0, RunCue.Still, 1, "Leave it still; 6 s left.")]
    [InlineData(70, 0, RunCue.PourOut, 5, "Pour it out; 5 s left.")]
    [InlineData(75, 1, RunCue.Agitate, 15, "Tilt the box; 20 s left.")]
    [InlineData(94, 1, RunCue.PourOut, 1, "Pour it out; 1 s left.")]
    [InlineData(95, 2, RunCue.Agitate, 30, "Tilt the box; 240 s left.")]
    [InlineData(335, 3, RunCue.Agitate, 10, "Tilt the box; 30 s left.")]
    [InlineData(455, 7, RunCue.Done, 0, "All done.")]
    [InlineData(9999, 7, RunCue.Done, 0, "All done.")]
    [Source("common-practice")]
    public void The_usual_run(double elapsed, int step, RunCue cue, double cueLeft, string says)
    {
        var moment = ProcessingRun.Begin(Plan, Start).At(Start.AddSeconds(elapsed));
        Assert.Equal(step, moment.Index);
        Assert.Equal(cue, moment.Cue);
        Assert.Equal(cueLeft, moment.CueLeft.Seconds, 1e-9);
        Assert.Equal(says, moment.Say());
    }

    [Fact]
    public void Steps_follow_without_gap_or_overlap() => Gen.Double[0, 455].Sample(elapsed =>
    {
        var moment = Plan.At(S(elapsed));
        if (moment.Step is not null)
        {
            var before = Plan.Steps.Take(moment.Index).Sum(step => step.Time.Seconds);
            Assert.Equal(elapsed, before + moment.Elapsed.Seconds, 1e-9);
            Assert.Equal(moment.Step.Time.Seconds, moment.Elapsed.Seconds + moment.Left.Seconds, 1e-9);
        }
    });

    [Fact]
    public void A_cue_holds_until_it_says_and_no_longer() => Gen.Select(Gen.Double[0, 454], Gen.Double[0, 0.999]).Sample((elapsed, part) =>
    {
        var moment = Plan.At(S(elapsed));
        var later = Plan.At(S(elapsed + (moment.CueLeft.Seconds * part)));
        Assert.Equal((moment.Index, moment.Cue), (later.Index, later.Cue));
        var next = Plan.At(S(elapsed + moment.CueLeft.Seconds + 1e-6));
        Assert.NotEqual((moment.Index, moment.Cue), (next.Index, next.Cue));
    });

    [Fact]
    public void A_step_begun_by_hand_counts_from_then()
    {
        var run = ProcessingRun.Begin(Plan, Start).BeginStep(1, Start.AddSeconds(90));
        Assert.Equal(15, run.At(Start.AddSeconds(95)).Left.Seconds, 1e-9);
        Assert.Equal(2, run.At(Start.AddSeconds(110)).Index);
        Assert.Equal(240, run.At(Start.AddSeconds(110)).Left.Seconds, 1e-9);
        Assert.Equal(1, run.BeginStep(3, Start.AddSeconds(200)).At(Start.AddSeconds(229)).Left.Seconds, 1e-9);
    }

    [Fact]
    public void A_step_kept_by_hand_runs_over()
    {
        var moment = Plan.InStep(0, S(87));
        Assert.Equal(12, moment.Over.Seconds, 1e-9);
        Assert.Equal("Pour it out; 12 s over.", moment.Say());
    }

    [Fact]
    public void Instants_count_whatever_the_zone()
        => Assert.Equal(34, ProcessingRun.Begin(Plan, Start).At(Start.AddSeconds(41).ToUniversalTime()).Left.Seconds, 1e-9);

    [Fact]
    public void A_clock_set_back_is_said()
    {
        var run = ProcessingRun.Begin(Plan, Start);
        Assert.Contains("set back", Assert.Throws<RefusalException>(() => run.At(Start.AddHours(-1))).Message, StringComparison.Ordinal);
        Assert.Throws<RefusalException>(() => run.BeginStep(1, Start.AddSeconds(-1)));
    }

    [Fact]
    public void A_step_behind_is_refused()
        => Assert.Contains("already behind", Assert.Throws<RefusalException>(() => ProcessingRun.Begin(Plan, Start).BeginStep(2, Start).BeginStep(1, Start)).Message, StringComparison.Ordinal);

    [Fact]
    public void Two_sheets_one_pair_of_hands()
    {
        var first = ProcessingRun.Begin(Plan, Start);
        var second = ProcessingRun.Begin(Plan, Start.AddSeconds(120));

        // At 150 s the second is 30 s in and moved for 3 s; the first is in the fixer for 55 s and rests until 60 s.
        Assert.Same(second, ProcessingRun.Soonest([first, second], Start.AddSeconds(150)));
        Assert.Null(ProcessingRun.Soonest([first, second], Start.AddHours(1)));
    }

    [Fact]
    public void Baths_out_of_order_are_refused()
    {
        var always = Agitation.From(AgitationMotion.Rock, S(0), S(10), S(10));
        ProcessingStep Step(ProcessingBath bath) => ProcessingStep.From(bath, S(60), always);
        Assert.Contains("begins with the developer", Assert.Throws<RefusalException>(() => ProcessingPlan.From([Step(ProcessingBath.Fix)])).Message, StringComparison.Ordinal);
        Assert.Contains("stop bath comes after the fixer", Assert.Throws<RefusalException>(() => ProcessingPlan.From(
            [Step(ProcessingBath.Developer), Step(ProcessingBath.Fix), Step(ProcessingBath.Stop)])).Message, StringComparison.Ordinal);
        Assert.Throws<RefusalException>(() => ProcessingPlan.From([]));
        Assert.Equal(2, ProcessingPlan.From([Step(ProcessingBath.Developer)]).Warnings.Count);
        Assert.Equal(2, ProcessingPlan.From([Step(ProcessingBath.Developer), Step(ProcessingBath.Fix)]).Warnings.Count);
        Assert.Empty(Plan.Warnings);
        Assert.Empty(ProcessingPlan.Usual(S(75), rinse: true).Warnings);
    }

    [Fact]
    public void Absurd_steps_are_refused()
    {
        Assert.Throws<RefusalException>(() => ProcessingPlan.Usual(S(0)));
        Assert.Throws<RefusalException>(() => Agitation.From(AgitationMotion.Tilt, S(10), S(10), S(11)));
        Assert.Throws<RefusalException>(() => Agitation.From(AgitationMotion.Tilt, S(10), S(0), S(0)));
        Assert.Throws<RefusalException>(() => ProcessingStep.From(ProcessingBath.Stop, S(20), Plan.Steps[1].Agitation, S(11)));
    }

    [Fact]
    public void Every_bath_has_its_cautions_and_each_is_short()
    {
        var all = Enum.GetValues<ProcessingBath>().SelectMany(Cautions.For)
            .Concat(Cautions.Mixing).Concat(Cautions.Everywhere).Concat(Cautions.Disposal).Concat(Cautions.Emergency).Append(Cautions.First).ToList();
        Assert.All(Enum.GetValues<ProcessingBath>(), bath => Assert.NotEmpty(Cautions.For(bath)));
        Assert.All(all, line => Assert.True(line.Length <= 120 && line.EndsWith('.'), line));
        Assert.Contains(Cautions.For(ProcessingBath.Developer), line => line.Contains("gloves", StringComparison.Ordinal));
        Assert.Contains(Cautions.For(ProcessingBath.Fix), line => line.Contains("silver", StringComparison.Ordinal));
        Assert.Contains("data sheet", Cautions.First, StringComparison.Ordinal);
    }
}
