using Foramen.Engine.Learning;
using Foramen.Engine.Light;
using Foramen.Engine.Paper;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Fold;
using Foramen.Journal.Learning;
using static Foramen.Journal.Tests.Learning.SheetStories;

namespace Foramen.Journal.Tests.Learning;

public sealed class SheetLessonTests
{
    private static readonly FailureLaw None = SchwarzschildFailure.FromExponent(1);
    private static readonly FailureLaw Half = SchwarzschildFailure.FromExponent(0.5);

    [Fact]
    public void With_nothing_written_of_the_hole_the_planned_time_was_given()
    {
        Assert.Equal(90, SheetLesson.GivenTime(AtTheHole(planned: 90), None).Seconds);
        Assert.Throws<RefusalException>(() => SheetLesson.GivenTime(AtTheHole(planned: null), None));
    }

    [Theory]
    [InlineData(null)]
    [InlineData(90.0)]
    public void The_time_that_the_hole_was_open_counts_whatever_was_planned(double? planned)
        => Assert.Equal(12, SheetLesson.GivenTime(AtTheHole(planned, (0, Opened()), (12, Closed())), None).Seconds, 1e-9);

    // A half of the light for 10 s is 5 s of the whole; covered is none.
    [Fact]
    public void Without_failure_time_in_less_light_counts_for_less()
    {
        var sheet = AtTheHole(90, (0, Opened()), (10, Changed(-1, LightWord.Cloud)), (20, Changed(0, LightWord.Covered)), (50, Changed(1, LightWord.Sun)), (53, Closed()));
        Assert.Equal(10 + 5 + 0 + 6, SheetLesson.GivenTime(sheet, None).Seconds, 1e-9);
    }

    // K. Schwarzschild 1900 with p = 0.5: the effect grows as I·t^0.5, so half the light needs four times as long.
    [Theory]
    [InlineData(null)]
    [InlineData(100.0)]
    public void With_failure_half_the_light_for_four_times_as_long_is_the_time_in_the_metered_light(double? planned)
        => Assert.Equal(100, SheetLesson.GivenTime(AtTheHole(planned, (0, new HoleOpened { Sheet = SheetId(1), LightStops = -1 }), (400, Closed())), Half).Seconds, 1e-6);

    // With a law that is no power of time it matters which time was planned: the time that the plan asks for in this light is the planned time.
    [Fact]
    public void The_whole_time_that_a_plan_asks_for_in_less_light_is_the_planned_time()
    {
        var law = AdditivePowerFailure.FromExtraAtOneSecond(0.3);
        var whole = law.SecondsNeeded(2 * law.MeteredSecondsFor(100));
        Assert.Equal(100, SheetLesson.GivenTime(AtTheHole(100, (0, new HoleOpened { Sheet = SheetId(1), LightStops = -1 }), (whole, Closed())), law).Seconds, 0.01);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(0.005, false)]
    [InlineData(0.25, true)]
    [InlineData(86_400, true)]
    [InlineData(86_401, false)]
    public void An_opening_of_no_time_or_of_more_than_a_day_is_no_exposure(double seconds, bool good)
    {
        var sheet = AtTheHole(null, (0, Opened()), (seconds, Closed()));
        if (good)
        {
            Assert.Equal(seconds, SheetLesson.GivenTime(sheet, None).Seconds, 1e-6);
        }
        else
        {
            Assert.Throws<RefusalException>(() => SheetLesson.GivenTime(sheet, None));
        }
    }

    [Fact]
    public void The_colour_of_the_light_is_that_of_the_plan_or_else_of_the_first_tone_that_says_it()
    {
        Assert.Null(SheetLesson.KelvinOf(One(Started(1), Tone(1))));
        var read = One(Started(1), Tone(1), Tone(1, tone: 1) with { LightKelvin = 3200 }, Tone(1, tone: 2) with { LightKelvin = 6500 });
        Assert.Equal(3200, SheetLesson.KelvinOf(read));
        Assert.Equal(3200, SheetLesson.KelvinOf(One(Started(1), Tone(1) with { LightKelvin = 3200 }, Plan(1))));
        Assert.Equal(10_000, SheetLesson.KelvinOf(One(Started(1), Tone(1) with { LightKelvin = 3200 }, Plan(1) with { LightKelvin = 10_000 })));
    }

    // Daylight D55 is at 5503 K (CIE 15); lights are known from 1500 to 25 000 K.
    [Theory]
    [InlineData(null, 5503)]
    [InlineData(3200.0, 3200)]
    [InlineData(1000.0, 1500)]
    [InlineData(100_000.0, 25_000)]
    public void A_sheet_is_reckoned_in_the_light_that_was_said_and_in_daylight_where_nobody_said(double? said, double kelvin)
        => Assert.Equal(kelvin, Basis(Started(1), Tone(1) with { LightKelvin = said }).Light.Temperature.Kelvin, 0.5);

    // A mired is 10⁶/K. Between 3200 and 5503 K lies 4047 K in the middle by mireds, 4352 K by kelvins.
    [Theory]
    [InlineData(3000, "lamp")]
    [InlineData(3200, "low sun")]
    [InlineData(3950, "low sun")]
    [InlineData(4200, "noon")]
    [InlineData(6500, "overcast")]
    [InlineData(7800, "overcast")]
    [InlineData(8100, "open shade")]
    [InlineData(25_000, "blue shade")]
    public void A_light_is_learned_under_the_kind_of_sky_that_is_nearest_in_mireds(double kelvin, string sky)
        => Assert.Equal(sky, SheetLesson.SkyOf(LightColour.FromTemperature(ColourTemperature.FromKelvin(kelvin))));

    [Fact]
    public void What_spoilt_a_sheet_besides_its_tones_is_what_its_maker_says_of_a_sheet_that_was_not_kept()
    {
        var all = Enum.GetValues<MishapCause>();
        Assert.Empty(SheetLesson.LossesOf(Judged(1, 0, true, all)));
        Assert.Empty(SheetLesson.LossesOf(Judged(1, 0, false)));
        Assert.Equal(
            new Dictionary<MishapCause, SheetLoss>
            {
                [MishapCause.Frame] = SheetLoss.Frame, [MishapCause.Motion] = SheetLoss.Motion, [MishapCause.Process] = SheetLoss.Process, [MishapCause.Leak] = SheetLoss.Process,
                [MishapCause.Light] = SheetLoss.Other, [MishapCause.Other] = SheetLoss.Other,
            },
            all.Zip(SheetLesson.LossesOf(Judged(1, 0, false, all))).ToDictionary(pair => pair.First, pair => pair.Second));
    }

    [Fact]
    public void A_frame_is_as_narrow_as_its_smallest_margin()
    {
        var frame = new FrameChosen { Sheet = SheetId(1), Orientation = SheetOrientation.Level };
        Assert.Null(SheetLesson.MarginOf(One(Started(1))));
        Assert.Null(SheetLesson.MarginOf(One(Started(1), frame)));
        Assert.Equal(7, SheetLesson.MarginOf(One(Started(1), frame with { MarginTopPercent = 7 })));
        foreach (var smallest in new[]
        {
            frame with { MarginLeftPercent = 3, MarginRightPercent = 9, MarginTopPercent = 9, MarginBottomPercent = 9 },
            frame with { MarginLeftPercent = 9, MarginRightPercent = 3, MarginTopPercent = 9, MarginBottomPercent = 9 },
            frame with { MarginLeftPercent = 9, MarginRightPercent = 9, MarginTopPercent = 3, MarginBottomPercent = 9 },
            frame with { MarginLeftPercent = 9, MarginRightPercent = 9, MarginTopPercent = 9, MarginBottomPercent = 3 },
        })
        {
            Assert.Equal(3, SheetLesson.MarginOf(One(Started(1), smallest)));
        }

        Assert.Equal(-50, SheetLesson.MarginOf(One(Started(1), frame with { MarginTopPercent = -900 })));
        Assert.Equal(50, SheetLesson.MarginOf(One(Started(1), frame with { MarginTopPercent = 90 })));
    }

    [Fact]
    public void Before_a_sheet_went_through_the_bath_those_of_its_outing_that_were_bathed_earlier()
    {
        BathStarted Bath(int number) => new() { Sheet = SheetId(number) };
        var other = TestKit.Make.Id(40_005);
        var ledger = Folded(
            new OutingStarted { Outing = FirstOuting, Name = "first" }, new OutingStarted { Outing = other, Name = "second" },
            Started(1, FirstOuting), Started(2, FirstOuting), Started(3, FirstOuting), Started(4, FirstOuting), Started(5, other), Started(6), Started(7, FirstOuting),
            Bath(5), Bath(2), Judged(7), Bath(1), Bath(6), Bath(3), Judged(2));
        Assert.Equal(
            [1, 0, 2, 3, 0, 0, 1],
            Enumerable.Range(1, 7).Select(number => SheetLesson.ConditionsOf(ledger, ledger.Sheets.Find(SheetId(number))!, LightColour.Noon)!.SheetsInBottle));
    }

    [Fact]
    public void What_bears_on_a_sheet_is_its_box_its_camera_and_its_sky()
    {
        var ledger = Folded(Started(1), new SheetStarted { Sheet = SheetId(2), Paper = Paper }, new SheetStarted { Sheet = SheetId(3), Camera = Camera }, Started(4, paper: SheetId(99)));
        var conditions = SheetLesson.ConditionsOf(ledger, ledger.Sheets.Find(SheetId(1))!, LightColour.Overcast)!;
        Assert.Equal((Paper.ToString(), Camera.ToString(), "overcast", true), (conditions.Box, conditions.Camera, conditions.Sky, conditions.Metered));
        Assert.Equal((0.25, 0.04), (conditions.LabelSpread!.Value.Value, conditions.FailureSpread!.Value.Value));
        Assert.All([2, 3, 4], number => Assert.Null(SheetLesson.ConditionsOf(ledger, ledger.Sheets.Find(SheetId(number))!, LightColour.Overcast)));
    }

    [Fact]
    public void A_sheet_without_camera_paper_or_tone_cannot_be_foretold_and_says_which_is_missing()
    {
        Assert.Contains("which camera and which box", Refused(new SheetStarted { Sheet = SheetId(1), Paper = Paper }, Tone(1)), StringComparison.Ordinal);
        Assert.Contains("which camera and which box", Refused(new SheetStarted { Sheet = SheetId(1), Camera = Camera }, Tone(1)), StringComparison.Ordinal);
        Assert.Contains("No tone", Refused(Started(1)), StringComparison.Ordinal);

        static string Refused(params EntryBody[] bodies) => Assert.Throws<RefusalException>(() => Basis(bodies)).Message;
    }

    [Theory]
    [InlineData(LightWord.Cloud, true)]
    [InlineData(LightWord.ThinCloud, true)]
    [InlineData(LightWord.Sun, false)]
    [InlineData(LightWord.Covered, false)]
    public void Under_clouds_that_moved_the_light_is_known_less_well(LightWord word, bool moved)
    {
        var steady = Basis(Started(1), Tone(1)).Errors;
        var errors = Basis(Started(1), Tone(1), Opened(), Changed(-1, word), Closed()).Errors;
        Assert.Equal(moved ? 0.5 : steady.Light.Value, errors.Light.Value);
        Assert.Equal(steady, errors with { Light = steady.Light });
        Assert.True(steady.Light.Value < 0.5);
        Assert.Equal(0.25, steady.Paper.Value);
    }

    [Fact]
    public void A_flash_counts_where_one_was_possible_and_its_times_are_added()
    {
        EntryBody[] flashes = [new FlashFinished { Sheet = SheetId(1), GivenSeconds = 2 }, new FlashStarted { Sheet = SheetId(1), PlannedSeconds = 9 }, new FlashFinished { Sheet = SheetId(1), GivenSeconds = 3.5 }];
        var with = Folded([Started(1), Tone(1), Plan(1, 90) with { FlashLuminanceCandelasPerSquareMetre = 400 }, .. flashes]);
        var without = Folded([Started(1), Tone(1), Plan(1, 90), .. flashes]);
        Assert.Equal((90, 5.5), Given(with));
        Assert.Equal((90, 0), Given(without));

        static (double, double) Given(Ledger ledger)
        {
            var sheet = ledger.Sheets.Find(SheetId(1))!;
            var exposure = SheetLesson.GivenExposure(sheet, SheetLesson.BasisOf(ledger, sheet));
            return (exposure.Time.Seconds, exposure.Flash.Seconds);
        }
    }

    // A grey surface of the tone's own luminance lights the middle of the sheet as the tone does.
    [Fact]
    public void The_flash_s_surface_lights_the_sheet_as_a_tone_of_its_luminance_does()
    {
        var basis = Basis(Started(1), Tone(1), Plan(1) with { FlashLuminanceCandelasPerSquareMetre = 1000 });
        Assert.Equal(Assert.Single(basis.Tones).OnSheet.Lux, basis.Flash.OnSheet.Lux, 1e-12);
        Assert.True(basis.Flash.ThroughHole);
    }

    // Light falls off with the fourth power of the cosine of the angle from the axis: the first edge of a photograph gets less than its middle.
    [Fact]
    public void A_tone_lies_where_the_photograph_shows_it_and_in_the_middle_where_nobody_knows()
    {
        var photo = new PhotographAdded { Sheet = SheetId(1), ContentHash = new string('a', 64), WidthPixels = 4000, HeightPixels = 3000, MediaType = "image/jpeg" };
        var frame = new FrameChosen { Sheet = SheetId(1), Orientation = SheetOrientation.Level };
        ToneRead[] tones = [Tone(1) with { PhotographX = 0.5, PhotographY = 0.5 }, Tone(1, tone: 1) with { PhotographX = 0.02, PhotographY = 0.5 }, Tone(1, tone: 2)];
        var byAngle = Lux(photo, frame with { PhotographFieldDegrees = 70 });
        Assert.Equal(byAngle[2], byAngle[0], byAngle[2] * 1e-6);
        Assert.True(byAngle[1] < 0.8 * byAngle[0]);

        // 26 mm on a frame 36 mm wide (CIPA DCG-001: by the diagonal, 43.3 mm) is a field of much the same width.
        var byFocal = Lux(photo with { Facts = new PhotographedHow { FocalLength35Millimetres = 26 } }, frame);
        Assert.Equal(byAngle[1], byFocal[1], byAngle[1] * 0.1);

        // What was chosen by hand goes before what the file says; a telephoto's edge is near the axis.
        Assert.Equal(byAngle, Lux(photo with { Facts = new PhotographedHow { FocalLength35Millimetres = 200 } }, frame with { PhotographFieldDegrees = 70 }));
        Assert.True(Lux(photo with { Facts = new PhotographedHow { FocalLength35Millimetres = 200 } }, frame)[1] > byAngle[1]);

        // Turned away to the right, the left edge of the photograph lies outside of the sheet, or further from its axis.
        Assert.NotEqual(byAngle, Lux(photo, frame with { PhotographFieldDegrees = 70, AimPanDegrees = 10 }));
        Assert.NotEqual(byAngle, Lux(photo, frame with { PhotographFieldDegrees = 70, AimTiltDegrees = 15 }));

        // Without a photograph, a frame or a field nobody knows.
        foreach (var unknown in new[] { Lux(frame with { PhotographFieldDegrees = 70 }), Lux(photo), Lux(photo, frame) })
        {
            Assert.All(unknown, lux => Assert.Equal(byAngle[2], lux, byAngle[2] * 1e-9));
        }

        double[] Lux(params EntryBody[] how) => [.. Basis([Started(1), .. tones, .. how]).Tones.Select(tone => tone.OnSheet.Lux)];
    }

    // A standing sheet's edge is nearer to its axis than a lying sheet's: what is at the edge of a lying one is not on a standing one.
    [Fact]
    public void A_standing_sheet_shows_less_of_the_width_than_a_lying_one()
    {
        // tan 50° · 0.84 · 63 mm = 63.1 mm from the axis, at 45°: a quarter of the light (cos⁴, the hole being thin) within 127 mm; beyond 102 mm, so reckoned in the middle.
        Assert.Equal(0.25, Edge(SheetOrientation.Level) / Edge(SheetOrientation.Upright), 0.02);

        static double Edge(SheetOrientation orientation) => Assert.Single(Basis(
            Started(1), Tone(1) with { PhotographX = 0.08, PhotographY = 0.5 },
            new PhotographAdded { Sheet = SheetId(1), ContentHash = new string('a', 64), WidthPixels = 4000, HeightPixels = 3000, MediaType = "image/jpeg" },
            new FrameChosen { Sheet = SheetId(1), Orientation = orientation, PhotographFieldDegrees = 100 }).Tones).OnSheet.Lux;
    }

    private static HoleOpened Opened() => new() { Sheet = SheetId(1) };

    private static HoleClosed Closed() => new() { Sheet = SheetId(1) };

    private static LightChanged Changed(double stops, LightWord word) => new() { Sheet = SheetId(1), LightStops = stops, Light = word };

    private static Sheet One(params EntryBody[] bodies) => Folded(bodies).Sheets.Find(SheetId(1))!;

    private static PlanBasis Basis(params EntryBody[] bodies)
    {
        var ledger = Folded(bodies);
        return SheetLesson.BasisOf(ledger, ledger.Sheets.Find(SheetId(1))!);
    }
}
