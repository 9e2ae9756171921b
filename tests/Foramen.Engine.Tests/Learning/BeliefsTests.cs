using CsCheck;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using static Foramen.Engine.Tests.Learning.LearningExamples;

namespace Foramen.Engine.Tests.Learning;

public class BeliefsTests
{
    private static readonly string[] Skies = ["noon", "overcast", "open shade"];

    private static readonly Gen<Evidence[]> Histories =
        Gen.Select(Gen.Double[-2, 2], Gen.Int[0, 2], Gen.Double[0, 900], Gen.Int[0, 2], (seen, sky, days, limit) => (seen, sky, days, limit))
            .Array[1, 25]
            .Select(sheets => sheets.Select((sheet, i) => Sheet($"sheet {i:00}", sheet.seen, Skies[sheet.sky], sheet.days, (ObservedLimit)sheet.limit)).ToArray());

    [Fact]
    public void The_order_of_the_evidence_does_not_matter()
        => Gen.Select(Histories, Gen.Int).Sample((history, seed) =>
        {
            var shuffled = history.ToArray();
            new Random(seed).Shuffle(shuffled);
            var (one, other) = (Beliefs.From(history, Now), Beliefs.From(shuffled, Now));
            Assert.Equal(one.All, other.All);
            Assert.Equal(one.ScatterFactor, other.ScatterFactor);
            Assert.Equal(one.Tolerance, other.Tolerance);
        });

    [Fact]
    public void An_entry_counts_once_however_often_it_arrives()
        => Histories.Sample(history => Assert.Equal(Beliefs.From(history, Now).All, Beliefs.From([.. history, .. history, history[0]], Now).All));

    [Fact]
    public void Beliefs_stay_finite_and_no_wider_than_before()
        => Histories.Sample(history =>
        {
            foreach (var belief in Beliefs.From(history, Now).All)
            {
                Assert.True(double.IsFinite(belief.Mean.Value));
                Assert.InRange(belief.Spread.Value, 0, belief.PriorSpread.Value * (1 + 1e-9));
            }
        });

    [Fact]
    public void Contradictory_judgements_widen_and_do_not_explode()
    {
        var agreeing = Beliefs.From(Enumerable.Range(0, 10).Select(i => Sheet($"{i}", 0.5)), Now);
        var contradicting = Beliefs.From(Enumerable.Range(0, 10).Select(i => Sheet($"{i}", i % 2 == 0 ? 2.5 : -1.5)), Now);
        var conditions = Sheet("0", 0).Conditions();
        var (calm, torn) = (agreeing.Expect(conditions, 1), contradicting.Expect(conditions, 1));
        Assert.True(torn.Spread.Value > 1.5 * calm.Spread.Value, $"{torn.Spread} against {calm.Spread}");
        Assert.InRange(torn.Mean.Value, -1, 2);
        Assert.True(contradicting.ScatterFactor > agreeing.ScatterFactor);
    }

    [Fact]
    public void One_absurd_judgement_moves_little_and_a_more_absurd_one_no_more()
    {
        var sane = Enumerable.Range(0, 12).Select(i => Sheet($"{i:00}", 0.25)).ToList();
        var conditions = sane[0].Conditions();
        var without = Beliefs.From(sane, Now).Expect(conditions, 1).Mean.Value;
        double Moved(double seen) => Math.Abs(Beliefs.From([.. sane, Sheet("bad", seen)], Now).Expect(conditions, 1).Mean.Value - without);
        Assert.InRange(Moved(9), 0, 0.15);
        Assert.InRange(Moved(30), 0, Moved(4) + 0.02);
    }

    [Fact]
    public void A_burnt_tone_only_pushes_one_way()
    {
        var conditions = Sheet("a", 0).Conditions();
        double Mean(double seen, ObservedLimit limit) => Beliefs.From([Sheet("a", seen, limit: limit)], Now).Expect(conditions, 0).Mean.Value;
        var nothing = Beliefs.From([], Now).Expect(conditions, 0).Mean.Value;

        Assert.True(Mean(1, ObservedLimit.AtLeast) > nothing + 0.2);
        Assert.True(Mean(-1, ObservedLimit.AtMost) < nothing - 0.2);

        // That a tone is lighter by at least minus three says next to nothing; that it is darker by at least three says much.
        Assert.Equal(nothing, Mean(-3, ObservedLimit.AtLeast), 0.02);
        Assert.Equal(nothing, Mean(3, ObservedLimit.AtMost), 0.02);
    }

    [Fact]
    public void Evidence_is_forgotten_slowly()
    {
        var conditions = Sheet("a", 0).Conditions();
        double Spread(double daysAgo) => Beliefs.From(Enumerable.Range(0, 6).Select(i => Sheet($"{i}", 0.5, daysAgo: daysAgo)), Now).Expect(conditions, 0).Spread.Value;
        Assert.True(Spread(30) < Spread(365));
        Assert.True(Spread(365) < Spread(3650));
        Assert.Equal(Beliefs.From([], Now).Expect(conditions, 0).Spread.Value, Spread(36_500), 0.01);
    }

    [Fact]
    public void The_entry_that_moved_a_belief_is_named_first_and_by_how_much()
    {
        var history = Enumerable.Range(0, 6).Select(i => Sheet($"{i}", 0)).Append(Sheet("the one", 1)).ToList();
        var beliefs = Beliefs.From(history, Now);
        var conditions = history[0].Conditions();
        var why = beliefs.Why(conditions, 1, 3);
        Assert.Equal("the one", why[0].Evidence.Id);
        Assert.True(why[0].Moved.Value > 0);
        Assert.Equal(3, why.Count);

        // Against leaving it out in earnest; weights and scales move a little then.
        var refit = beliefs.Expect(conditions, 1).Mean.Value - beliefs.Without("the one").Expect(conditions, 1).Mean.Value;
        Assert.Equal(refit, why[0].Moved.Value, 0.08);
    }

    [Fact]
    public void Sheets_of_another_box_teach_the_meter_but_not_this_box()
    {
        var history = Enumerable.Range(0, 8).Select(i => Sheet($"{i}", 0.6)).ToList();
        var beliefs = Beliefs.From(history, Now);
        Assert.True(beliefs.Of(new BeliefKey(BeliefKind.Meter, "")).Mean.Value > 0.02);
        Assert.Equal(0, beliefs.Of(new BeliefKey(BeliefKind.Speed, "another")).Mean.Value);

        // A wrong box noted later: the same sheets with the right box.
        var corrected = Beliefs.From(history.Select(sheet => sheet with { Box = "another" }), Now);
        Assert.Equal(beliefs.Of(Speed).Mean, corrected.Of(new BeliefKey(BeliefKind.Speed, "another")).Mean);
        Assert.Equal(0, corrected.Of(Speed).Mean.Value);
    }

    [Fact]
    public void Keeping_sheets_that_were_far_off_shows_tolerance()
    {
        Beliefs Of(bool kept, double seen) => Beliefs.From(Enumerable.Range(0, 15).Select(i => Sheet($"{i:00}", i % 2 == 0 ? seen : -seen) with { Kept = kept }), Now);
        Assert.True(Of(true, 0.8).Tolerance.Factor > 1.15);
        Assert.True(Of(false, 0.2).Tolerance.Factor < 0.9);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(41)]
    public void Absurd_numbers_are_refused(double doublings)
        => Assert.Throws<RefusalException>(() => Beliefs.From([Sheet("a", 0) with { Doublings = doublings }], Now));

    [Fact]
    public void A_thousand_sheets_of_five_boxes_settle()
    {
        var random = new Random(3);
        var history = Enumerable.Range(0, 1000)
            .Select(i => Sheet($"{i:0000}", 0.4 + (0.5 * (random.NextDouble() - 0.5)), i % 3 == 0 ? "noon" : "overcast", i) with { Box = $"box {i % 5}" });
        var beliefs = Beliefs.From(history, Now);
        Assert.InRange(beliefs.Expect(Sheet("a", 0).Conditions() with { Box = "box 1" }, 1).Mean.Value, 0.25, 0.55);
    }
}
