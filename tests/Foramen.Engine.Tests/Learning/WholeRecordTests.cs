using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using static Foramen.Engine.Tests.Learning.LearningExamples;

namespace Foramen.Engine.Tests.Learning;

/// <summary>A record of two boxes, two cameras, flashes, bounds and strips against <see cref="PlainPosterior"/>.</summary>
public class WholeRecordTests
{
    // Few sheets' worth of assumption, so that both scales are found from the record.
    private static readonly PriorBeliefs Prior = PriorBeliefs.Usual with { ScatterWorth = 2, HalfLifeDays = 200 };

    private static readonly Evidence[] Record = [.. Made().OrderBy(sheet => sheet.Id, StringComparer.Ordinal)];

    private static readonly BeliefKey[] Keys =
    [
        new(BeliefKind.Speed, "box"), new(BeliefKind.Speed, "other"), new(BeliefKind.Failure, "box"), new(BeliefKind.Failure, "other"),
        new(BeliefKind.ShadowEnd, "box"), new(BeliefKind.ShadowEnd, "other"), new(BeliefKind.HighlightEnd, "box"), new(BeliefKind.Camera, "Box A"),
        new(BeliefKind.Camera, "tin"), new(BeliefKind.Meter, ""), new(BeliefKind.Light, "noon"), new(BeliefKind.Light, "overcast"),
        new(BeliefKind.Ageing, "sheets 1 to 5"), new(BeliefKind.Ageing, "sheets 6 to 10"), new(BeliefKind.Ageing, "sheets from 11 on"), new(BeliefKind.Flash, ""),
    ];

    private static readonly PlainPosterior Plain = new(
        Record, Keys, [.. Keys.Select(key => key.Kind == BeliefKind.Ageing ? -0.3 : 0)], [.. Keys.Select(SaidBefore)], Now, Prior);

    private readonly LaplaceFit fit = LaplaceFit.Of(Record, Now, Prior);

    [Fact]
    public void Everything_that_the_record_bears_on_is_believed_in_and_nothing_else() => Assert.Equal(Keys, fit.Keys);

    [Fact]
    public void The_beliefs_are_where_plain_matrices_find_them()
    {
        for (var i = 0; i < Keys.Length; i++)
        {
            Close(Plain.State[i], fit.State[i], 2e-3, $"{Keys[i]}");
            for (var j = 0; j < Keys.Length; j++)
            {
                Close(Plain.Covariance[i, j], fit.Covariance[i, j], 5e-4, $"{Keys[i]} with {Keys[j]}");
            }
        }
    }

    [Fact]
    public void So_are_the_scales_and_what_each_sheet_was_off()
    {
        Close(Plain.ScatterScale, fit.ScatterScale, 5e-3, "scatter");
        Close(Plain.ReadingScale, fit.ReadingScale, 5e-3, "readings");
        Assert.True(Math.Abs(fit.ScatterScale - 1) > 0.1 && Math.Abs(fit.ReadingScale - 1) > 0.1, $"This record should teach both scales, {fit.ScatterScale} and {fit.ReadingScale}.");
        for (var i = 0; i < Record.Length; i++)
        {
            Close(Plain.Shifts[i], fit.Rows[i].Shift, 3e-3, Record[i].Id);
        }
    }

    [Fact]
    public void An_expectation_is_the_sum_of_its_parts_and_its_variance_that_of_the_sum()
    {
        var beliefs = Beliefs.From(Record, Now, Prior);
        var sheet = Record[0] with { Box = "other", Camera = "tin", Sky = "overcast", SheetsInBottle = 12, Doublings = 3 };
        var slopes = PlainModel.Slopes(at => PlainModel.Common(sheet, Keys, at), Plain.State);
        var (mean, spread) = beliefs.Expect(sheet.Conditions(), 3);
        Assert.Equal(slopes * Plain.State, mean.Value, 4e-3);
        Assert.Equal(Math.Sqrt(slopes * Plain.Covariance * slopes), spread.Value, 2e-3);
    }

    // Every sheet is left out of the plain equations in turn, which the program does for the few that pull most.
    [Fact]
    public void The_entries_that_moved_an_expectation_most_are_those_that_move_it_when_left_out()
    {
        var beliefs = Beliefs.From(Record, Now, Prior);
        var asked = Record[0] with { Doublings = 2, SheetsInBottle = 7, Box = "box", Camera = "Box A", Sky = "noon", Metered = true };
        var slopes = PlainModel.Slopes(at => PlainModel.Common(asked, Keys, at), Plain.State);
        var moved = Record
            .Select((sheet, i) => (sheet.Id, Moved: slopes * (Plain.State - Plain.StateWithout(i))))
            .OrderByDescending(pair => Math.Abs(pair.Moved))
            .ToList();
        for (var most = 1; most <= 4; most++)
        {
            var why = beliefs.Why(asked.Conditions(), 2, most);
            Assert.Equal(moved.Take(most).Select(pair => pair.Id), why.Select(one => one.Evidence.Id));
            Assert.All(why.Zip(moved), pair => Close(pair.Second.Moved, pair.First.Moved.Value, 3e-3, pair.Second.Id));
        }
    }

    [Fact]
    public void Leaving_one_entry_out_gives_what_plain_matrices_give_for_every_belief()
    {
        for (var i = 0; i < Record.Length; i++)
        {
            var without = Plain.StateWithout(i);
            for (var key = 0; key < Keys.Length; key++)
            {
                var loads = new double[Keys.Length];
                loads[key] = 2;
                Close(2 * without[key], fit.Without(fit.Rows[i], loads), 5e-3, $"{Keys[key]} without {Record[i].Id}");
            }
        }
    }

    [Fact]
    public void Beliefs_without_some_entries_are_those_of_the_rest()
    {
        var beliefs = Beliefs.From(Record, Now, Prior);
        var rest = Beliefs.From(Record[2..], Now, Prior);
        Assert.Equal(rest.All, beliefs.Without(Record[0].Id, Record[1].Id).All);
        Assert.Equal(Record.Length - 2, beliefs.Without(Record[0].Id, Record[1].Id, "nowhere").Evidence.Count);
        Assert.Same(beliefs, beliefs.Without("nowhere"));
    }

    // The label that was read last counts, whatever was said of the box before.
    [Theory]
    [InlineData(Rendering.Mid, 0)]
    [InlineData(Rendering.OpenShadow, 0)]
    [InlineData(Rendering.Mid, 0.3)]
    public void A_label_counts_as_it_was_said_last(Rendering rendering, double flashShare)
    {
        Evidence[] sheets = [Says("a", 0.2), Says("b", 0.2), Says("c", 0.6), Says("d", 0.6), Says("e", null)];
        Assert.Equal(0.6, Before(sheets).Value);
        Assert.Equal(0.2, Before(sheets[..2]).Value);
        Assert.Equal(0.2, Before([.. sheets[..4], Says("e", 0.2)]).Value);
        Assert.Equal(PriorBeliefs.Usual.Speed, Before(sheets[4..]));

        static Stops Before(Evidence[] all) => Beliefs.From(all, Now).Of(Speed).PriorSpread;
        Evidence Says(string id, double? spread) => StripOf(id, 0.1) with
        {
            LabelSpread = spread is { } said ? Stops.FromValue(said) : null,
            Tones = [At(rendering, 0.1) with { FlashShare = flashShare }],
        };
    }

    // The first sheet shows a mid-tone only; ends and flash come later, on sheets that are otherwise alike.
    [Fact]
    public void Ends_and_flash_that_come_up_later_are_believed_in_too()
    {
        Evidence[] sheets =
        [
            StripOf("a", 0.1),
            StripOf("b", 0.1),
            StripOf("c", 0.1) with { Tones = [At(Rendering.OpenShadow, 0.2)] },
            StripOf("d", 0.1) with { Tones = [At(Rendering.OpenShadow, 0.2), At(Rendering.TexturedHighlight, 0.3)] },
            StripOf("e", 0.1) with { Tones = [At(Rendering.Mid, 0.2) with { FlashShare = 0.4 }] },
        ];
        for (var count = 1; count <= sheets.Length; count++)
        {
            BeliefKind[] kinds = [.. Beliefs.From(sheets[..count], Now).All.Select(belief => belief.Key.Kind)];
            Assert.Equal(count >= 3, kinds.Contains(BeliefKind.ShadowEnd));
            Assert.Equal(count >= 4, kinds.Contains(BeliefKind.HighlightEnd));
            Assert.Equal(count >= 5, kinds.Contains(BeliefKind.Flash));
        }
    }

    [Fact]
    public void Nothing_believed_before_evidence_but_that_a_used_developer_is_weaker()
    {
        var none = Beliefs.From([], Now);
        foreach (var kind in Enum.GetValues<BeliefKind>())
        {
            var belief = none.Of(new BeliefKey(kind, "any"));
            Assert.Equal(kind == BeliefKind.Ageing ? -0.3 : 0, belief.Mean.Value);
            Assert.Equal(belief.Mean, belief.PriorMean);
            Assert.Equal(belief.PriorSpread, belief.Spread);
        }

        Assert.Empty(none.All);
        Assert.Equal(1, none.ScatterFactor);
    }

    private static double SaidBefore(BeliefKey key) => (key.Kind, key.Of) switch
    {
        // As the sheets of that box say below; all else as usual.
        (BeliefKind.Speed, "other") => 0.4,
        (BeliefKind.Failure, "other") => 0.03,
        (BeliefKind.Speed, _) => 0.8,
        (BeliefKind.Failure, _) => 0.08,
        (BeliefKind.ShadowEnd or BeliefKind.HighlightEnd or BeliefKind.Light or BeliefKind.Flash, _) => 0.35,
        (BeliefKind.Camera, _) => 0.15,
        (BeliefKind.Meter, _) => 0.3,
        _ => 0.4,
    };

    private static ToneEvidence At(Rendering rendering, double seen) => Tone(seen, 0.35) with { Name = $"{rendering}", Rendering = rendering };

    private static IEnumerable<Evidence> Made()
    {
        var random = new Random(5);
        for (var i = 0; i < 14; i++)
        {
            double Seen() => 0.5 + (3.2 * (random.NextDouble() - 0.5));
            yield return Sheet($"sheet {i:00}", 0) with
            {
                Box = i % 4 == 3 ? "other" : "box",
                Camera = i % 3 == 0 ? "tin" : "Box A",
                Sky = i % 2 == 0 ? "noon" : "overcast",
                Doublings = (i % 5) - 1,
                SheetsInBottle = i % 7 * 2,
                At = Now.AddDays((-20 * i) + 30),
                LabelSpread = i % 4 == 3 ? Stops.FromValue(0.4) : null,
                FailureSpread = i % 4 == 3 ? Stops.FromValue(0.03) : null,
                Scatter = Stops.FromValue(i % 6 == 0 ? 0.5 : 0.3),
                Tones = (i % 4) switch
                {
                    0 => [At(Rendering.Mid, Seen()), At(Rendering.OpenShadow, Seen())],
                    1 => [At(Rendering.Mid, Seen()), At(Rendering.TexturedHighlight, Seen()), At(Rendering.OpenShadow, Seen()) with { FlashShare = 0.35 }],
                    2 => [At(Rendering.Mid, Seen()) with { FlashShare = 0.15 }, At(Rendering.TexturedHighlight, 0.6) with { Limit = ObservedLimit.AtLeast }],
                    _ => [At(Rendering.Mid, Seen()), At(Rendering.OpenShadow, 0.3) with { Limit = ObservedLimit.AtMost }],
                },
            };
        }

        yield return StripOf("strip 1", 0.7, 0.2, 1, 0.1);
        yield return StripOf("strip 2", 0.2, 0.2, 4, 0.1) with { Box = "other", LabelSpread = Stops.FromValue(0.4), FailureSpread = Stops.FromValue(0.03) };
    }

    private static void Close(double expected, double actual, double within, string what)
        => Assert.True(Math.Abs(expected - actual) <= within, $"{what}: {actual} instead of {expected}");
}
