using Foramen.Engine.Learning;
using Foramen.Journal.Bodies;
using Foramen.Journal.Learning;
using static Foramen.Journal.Tests.Learning.SheetStories;

namespace Foramen.Journal.Tests.Learning;

/// <summary>What a judged sheet teaches, and why one teaches nothing.</summary>
public sealed class JudgedSheetTests
{
    // On a direct positive twice the exposure is a stop lighter, where nothing fails.
    [Fact]
    public void Twice_the_exposure_should_have_come_out_a_stop_lighter()
    {
        var once = Assert.Single(Evidence(Started(1), Tone(1), Plan(1, 40), Judged(1)).Tones);
        var twice = Assert.Single(Evidence(Started(1), Tone(1), Plan(1, 80), Judged(1)).Tones);
        Assert.Equal(1, twice.Foretold.Value - once.Foretold.Value, 1e-9);
    }

    [Fact]
    public void A_judged_tone_is_what_was_seen_of_it_as_well_as_the_eye_sees()
    {
        var evidence = Evidence(Started(1), Tone(1) with { SdStops = 0.4 }, Plan(1, 240), Judged(1, lighter: -0.5));
        Assert.Equal((EvidenceKind.JudgedSheet, Paper.ToString(), Camera.ToString(), "noon", true), (evidence.Kind, evidence.Box, evidence.Camera, evidence.Sky, evidence.Kept));
        // 240 s are two doublings of the 60 s at which the label's speed was found.
        Assert.Equal(2, evidence.Doublings, 1e-9);
        var tone = Assert.Single(evidence.Tones);
        Assert.Equal(("tone 0", -0.5, ObservedLimit.Exact, ToneEvidence.ByEye), (tone.Name, tone.Seen.Value, tone.Limit, tone.Judging));
        Assert.Equal(Math.Sqrt(0.09 + 0.16), tone.Spread.Value, 1e-9);
        // A reading whose spread nobody said is known to a fifth of a stop.
        Assert.Equal(Math.Sqrt(0.09 + 0.04), Assert.Single(Evidence(Started(1), Tone(1), Plan(1), Judged(1)).Tones).Spread.Value, 1e-9);
    }

    [Theory]
    [InlineData(null, 0.30)]
    [InlineData(0.12, 0.12)]
    [InlineData(0.001, 0.05)]
    [InlineData(4.0, 0.30)]
    public void A_measured_tone_is_known_better_than_by_eye_but_never_perfectly(double? said, double judging)
        => Assert.Equal(judging, Assert.Single(Evidence(Started(1), Tone(1), Plan(1), Say(new JudgedTone { LighterByStops = 0, SdStops = said })).Tones).Judging.Value, 1e-12);

    [Theory]
    [InlineData(ToneFate.Burnt, 0.5, ObservedLimit.AtLeast)]
    [InlineData(ToneFate.Blocked, -0.5, ObservedLimit.AtMost)]
    [InlineData(ToneFate.TooDark, -0.5, ObservedLimit.Exact)]
    [InlineData(null, 0.5, ObservedLimit.Exact)]
    public void A_tone_that_went_past_the_end_of_its_band_is_a_bound(ToneFate? fate, double lighter, ObservedLimit limit)
        => Assert.Equal(limit, Assert.Single(Evidence(Started(1), Tone(1), Plan(1), Say(new JudgedTone { LighterByStops = lighter, Fate = fate })).Tones).Limit);

    [Fact]
    public void Each_tone_is_judged_by_itself_and_the_print_as_a_whole_counts_once()
    {
        EntryBody[] sheet = [Started(1), Tone(1, WantedRendering.MayBurn, 9000), Tone(1, WantedRendering.OpenShadow, 200, tone: 1), Tone(1, tone: 2), Plan(1)];
        var each = Evidence([.. sheet, Say(new JudgedTone { Tone = ToneId(12), LighterByStops = 1 }, new JudgedTone { Tone = ToneId(11), LighterByStops = -1 })]);
        Assert.Equal([("tone 2", 1.0), ("tone 1", -1.0)], each.Tones.Select(tone => (tone.Name, tone.Seen.Value)));

        // The first that was wanted in a certain way: what may burn says nothing.
        var whole = Evidence([.. sheet, Say(new JudgedTone { LighterByStops = 1 })]);
        Assert.Equal(["tone 1"], whole.Tones.Select(tone => tone.Name));
        Assert.Contains("None of its judged tones", LeftOut([.. sheet, Say(new JudgedTone { Tone = ToneId(10), LighterByStops = 1 })]), StringComparison.Ordinal);
        Assert.Contains("None of its judged tones", LeftOut([.. sheet, Say(new JudgedTone { Tone = ToneId(19), LighterByStops = 1 })]), StringComparison.Ordinal);
        Assert.Contains("None of its judged tones", LeftOut([.. sheet, new PrintJudged { Sheet = SheetId(1), Keeper = true }]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(MishapCause.Light, true)]
    [InlineData(MishapCause.Process, true)]
    [InlineData(MishapCause.Leak, true)]
    [InlineData(MishapCause.Frame, false)]
    [InlineData(MishapCause.Motion, false)]
    [InlineData(MishapCause.Other, false)]
    public void A_sheet_whose_light_or_bath_went_wrong_says_less_of_all_else(MishapCause cause, bool upset)
    {
        var usual = Evidence(Started(1), Tone(1), Plan(1), Judged(1)).Scatter.Value;
        var scatter = Evidence(Started(1), Tone(1), Plan(1), Judged(1, 0, true, MishapCause.Other, cause)).Scatter.Value;
        Assert.Equal(upset ? Math.Sqrt((usual * usual) + 1) : usual, scatter, 1e-9);
    }

    [Theory]
    [InlineData(true, MishapCause.Frame, true)]
    [InlineData(false, MishapCause.Other, false)]
    [InlineData(false, MishapCause.Light, false)]
    [InlineData(false, MishapCause.Frame, null)]
    [InlineData(false, MishapCause.Motion, null)]
    [InlineData(false, MishapCause.Leak, null)]
    public void Whether_its_tones_were_good_is_not_known_of_a_sheet_that_something_else_spoilt(bool keeper, MishapCause cause, bool? kept)
    {
        Assert.Equal(kept, Evidence(Started(1), Tone(1), Plan(1), Judged(1, 0, keeper, cause)).Kept);
        Assert.Equal(kept, Evidence(Started(1), Tone(1), Plan(1), Judged(1, 0, keeper, MishapCause.Other, cause)).Kept);
    }

    [Fact]
    public void The_light_that_a_sheet_was_made_in_is_the_sky_it_teaches_of()
    {
        var lessons = LedgerLessons.Of(Folded(
            Started(1), Tone(1) with { LightKelvin = 3000 }, Plan(1, 40), Judged(1),
            Started(2), Tone(2), Plan(2, 40), Judged(2),
            Started(3, paper: Failing), Tone(3) with { LightKelvin = 3000 }, Plan(3, 40), Judged(3)));
        Assert.Equal(["lamp", "noon", "lamp"], lessons.Evidence.Select(one => one.Sky));
        // A paper that sees blue alone gets less out of a lamp, so the same exposure foretells less.
        Assert.True(lessons.Evidence[0].Tones[0].Foretold.Value < lessons.Evidence[1].Tones[0].Foretold.Value);
        // 40 s at 1000 cd/m² where the speed was found at 60 s: the fail of p = 0.5 is half a stop for each doubling.
        Assert.Equal(Math.Log2(60.0 / 40) / 2, lessons.Evidence[2].Tones[0].Foretold.Value - lessons.Evidence[0].Tones[0].Foretold.Value, 1e-6);
    }

    // Each reason stands with the name of its sheet, in the order of judging; a sheet that cannot be used costs no other its lesson.
    [Fact]
    public void What_teaches_nothing_is_listed_with_name_and_reason()
    {
        var lessons = LedgerLessons.Of(Folded(
            Started(1), Tone(1), Started(2), Started(3), Tone(3), Plan(3), new ToneRead { Sheet = SheetId(4), Tone = ToneId(40), Name = "a", LuminanceCandelasPerSquareMetre = 1, Rendering = WantedRendering.Mid },
            Judged(4), Judged(3), Judged(2), Judged(1)));
        Assert.Equal(
            ["A sheet without a name: It does not say which camera and which box of paper it was made with.", "sheet 2: No tone of it was read.", "sheet 1: Neither a plan nor the opening of the hole was written down."],
            lessons.LeftOut);
        Assert.Equal(SheetId(3), lessons.SheetOf[Assert.Single(lessons.Evidence).Id]);
        Assert.Single(lessons.SheetOf);
        Assert.True(lessons.IsWhole);
    }

    [Fact]
    public void What_became_of_the_sheets_is_told_in_the_order_of_judging_and_of_judged_ones_alone()
    {
        var frame = new FrameChosen { Sheet = SheetId(1), Orientation = SheetOrientation.Level, MarginTopPercent = 4 };
        var ledger = Folded(
            Started(1), frame, Plan(1) with { Odds = 0.25 }, Started(2), frame with { Sheet = SheetId(2), MarginTopPercent = 6 }, Plan(2), Started(3), Plan(3) with { Odds = 0.75 },
            Started(4), frame with { Sheet = SheetId(4) }, Plan(4) with { Odds = 0.5 }, Started(5), frame with { Sheet = SheetId(5), MarginTopPercent = 9 },
            Judged(3), Judged(5), Judged(1, 0, false, MishapCause.Motion, MishapCause.Frame), Judged(2, 0, false, MishapCause.Leak));
        var lessons = LedgerLessons.Of(ledger);
        Assert.Equal([true, true, false, false], lessons.Keepers);
        Assert.Equal([[], [], [SheetLoss.Motion, SheetLoss.Frame], [SheetLoss.Process]], lessons.Losses);
        Assert.Equal([(0.75, true), (0.25, false)], lessons.Outcomes.Select(one => (one.Odds.Fraction, one.Keeper)));
        Assert.Equal([(9.0, false), (4.0, true), (6.0, false)], lessons.Frames);
        Assert.Equal(4, lessons.Mishaps.Sheets);
        Assert.Equal(MishapRates.From(lessons.Losses), lessons.Mishaps);
        Assert.Equal(AimingBelief.From(lessons.Frames), lessons.Aiming);
        // A sheet with a margin is in danger by its own frame, one without by how often frames went wrong.
        Assert.Equal(lessons.Mishaps.Frame, lessons.MishapsOf(ledger.Sheets.Find(SheetId(3))!).Frame);
        Assert.Equal(lessons.Aiming.ChanceOfCut(4), lessons.MishapsOf(ledger.Sheets.Find(SheetId(4))!).Frame);
        Assert.Equal(2, lessons.Outcomes.Count);
        Assert.NotNull(lessons.Scores);
        Assert.Null(LedgerLessons.Of(Folded(Started(1), Plan(1), Judged(1))).Scores);
    }

    [Fact]
    public void A_sheet_that_was_withdrawn_teaches_nothing()
    {
        var start = Started(1);
        var ledger = Folded(start, Tone(1), Plan(1), Judged(1), new EntryVoided { Entry = TestKit.Make.Id(Gear.Length + 1) });
        Assert.True(ledger.Sheets.All.Single().Withdrawn);
        Assert.Empty(LedgerLessons.Of(ledger).Keepers);
        Assert.Empty(LedgerLessons.Of(ledger).LeftOut);
    }

    [Fact]
    public void Lessons_are_worked_out_so_many_at_a_time_and_what_is_known_costs_nothing()
    {
        var ledger = Folded(Enumerable.Range(1, 5).SelectMany(i => (EntryBody[])[Started(i), Tone(i), Plan(i), Judged(i)]));
        var two = LedgerLessons.Begun(ledger, null, 2);
        Assert.Equal((2, false, 5), (two.Evidence.Count, two.IsWhole, two.Keepers.Count));
        Assert.Empty(two.LeftOut);
        Assert.Equal((0, false), (LedgerLessons.Begun(ledger, null, 0).Evidence.Count, LedgerLessons.Begun(ledger, null, 0).IsWhole));
        var four = LedgerLessons.Begun(ledger, two, 2);
        Assert.Equal((4, false), (four.Evidence.Count, four.IsWhole));
        Assert.Same(two.Evidence[1], four.Evidence[1]);
        var all = LedgerLessons.Begun(ledger, four, 1);
        Assert.Equal((5, true), (all.Evidence.Count, all.IsWhole));
        Assert.Equal(LedgerLessons.Of(ledger).Evidence.Select(one => one.Id), all.Evidence.Select(one => one.Id));
        Assert.True(LedgerLessons.Begun(ledger, all, 0).IsWhole);
    }

    // Whatever a lesson was worked out from, a change of it changes the lesson.
    [Fact]
    public void A_lesson_is_worked_out_again_when_its_paper_its_camera_or_its_bath_is_another()
    {
        EntryBody[] story =
        [
            new OutingStarted { Outing = FirstOuting, Name = "first" }, Started(1, FirstOuting), Tone(1), Plan(1), Started(2, FirstOuting, Failing), Tone(2), Plan(2),
            Judged(1), Judged(2),
        ];
        var before = LedgerLessons.Of(Folded(story));
        var speed = PaperOf(Paper, 1);
        Assert.Equal([true, false], Changed(speed with { Definition = speed.Definition with { Speed = speed.Definition.Speed with { ExposureIndex = 6 } } }));
        Assert.Equal([true, true], Changed(new HoleMeasured { Camera = Camera, DiameterMillimetres = 0.5, DiameterSdMillimetres = 0.001 }));
        Assert.Equal([false, false], Changed(new OutingStarted { Outing = SheetId(90), Name = "another" }));

        bool[] Changed(EntryBody more)
        {
            var ledger = Folded(story);
            var known = LedgerLessons.Of(ledger);
            var at = TestKit.Make.Noon.AddDays(1);
            var after = LedgerLessons.Of(ledger.With(Journal.Entries.Entry.Create(TestKit.Make.Id(77_777), TestKit.Make.Phone, 900, at, more)), known);
            Assert.Equal(2, before.Evidence.Count);
            return [.. known.Evidence.Zip(after.Evidence, (one, other) => !ReferenceEquals(one, other))];
        }
    }

    private static PrintJudged Say(params JudgedTone[] tones) => new() { Sheet = SheetId(1), Keeper = true, Tones = tones };

    private static Evidence Evidence(params EntryBody[] bodies)
    {
        var lessons = LedgerLessons.Of(Folded(bodies));
        Assert.Empty(lessons.LeftOut);
        return Assert.Single(lessons.Evidence);
    }

    private static string LeftOut(params EntryBody[] bodies)
    {
        var lessons = LedgerLessons.Of(Folded(bodies));
        Assert.Empty(lessons.Evidence);
        return Assert.Single(lessons.LeftOut);
    }
}
