using System.Text.Json;
using CsCheck;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using Foramen.Journal.Tests.Entries;
using Foramen.Journal.Tests.TestKit;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Fold;

public class LedgerTests
{
    private static readonly Ulid Sheet = Id(901);
    private static readonly Ulid Tone = Id(902);

    [Fact]
    [Trait("Promise", "J3")]
    public void Any_arrival_any_doubling_and_any_split_give_the_same_state()
        => Gen.Select(GenHistory.Histories, Gen.Int).Sample(
            (history, seed) => Assert.Equal(Shown.Ledger(Ledger.Of(EntrySet.Of(history))), Shown.Ledger(Ledger.Of(EntrySetTests.Merged(history, seed)))),
            iter: Samples.Of(300));

    [Fact]
    public void Folding_one_by_one_equals_folding_from_nothing()
        => Gen.Select(GenHistory.Histories, Gen.Int, Gen.Bool).Sample(
            (history, seed, shuffle) =>
            {
                var arriving = shuffle ? GenHistory.Shuffled(history, seed) : history;
                var ledger = Ledger.Empty;
                for (var i = 0; i < arriving.Length; i++)
                {
                    ledger = ledger.With(arriving[i]);
                    Assert.Equal(Shown.Ledger(Ledger.Of(EntrySet.Of(arriving.Take(i + 1)))), Shown.Ledger(ledger));
                }
            },
            iter: Samples.Of(100));

    [Fact]
    public void Folding_in_batches_equals_folding_from_nothing()
        => Gen.Select(GenHistory.Histories, Gen.Int[0, 40]).Sample(
            (history, cut) =>
            {
                var ledger = Ledger.Of(EntrySet.Of(history.Take(cut))).With(history.Skip(cut / 2));
                Assert.Equal(Shown.Ledger(Ledger.Of(EntrySet.Of(history))), Shown.Ledger(ledger));
            },
            iter: Samples.Of(300));

    [Fact]
    public void A_whole_life_goes_through_its_steps()
    {
        var ledger = Ledger.Empty;
        var step = 0;
        foreach (var (body, expected) in new (EntryBody, SheetStep)[]
        {
            (new SheetStarted { Sheet = Sheet }, SheetStep.Frame),
            (new PhotographAdded { Sheet = Sheet, ContentHash = OneOfEach.ContentHash, WidthPixels = 4, HeightPixels = 3, MediaType = "image/jpeg" }, SheetStep.Frame),
            (new FrameChosen { Sheet = Sheet, Orientation = SheetOrientation.Level }, SheetStep.Meter),
            (Read(100), SheetStep.Plan),
            (new PlanMade { Sheet = Sheet, ExposureSeconds = 120, FlashSeconds = 3 }, SheetStep.Flash),
            (new FlashStarted { Sheet = Sheet, PlannedSeconds = 3 }, SheetStep.Flash),
            (new FlashFinished { Sheet = Sheet }, SheetStep.Expose),
            (new HoleOpened { Sheet = Sheet }, SheetStep.Expose),
            (new LightChanged { Sheet = Sheet, LightStops = -2, Light = LightWord.Cloud }, SheetStep.Expose),
            (new HoleClosed { Sheet = Sheet }, SheetStep.Process),
            (new BathStarted { Sheet = Sheet }, SheetStep.Process),
            (new BathStep { Sheet = Sheet, Step = BathKind.Developer, PlannedSeconds = 90 }, SheetStep.Process),
            (new BathFinished { Sheet = Sheet }, SheetStep.Judge),
            (new PrintJudged { Sheet = Sheet, Keeper = true }, SheetStep.Done),
        })
        {
            ledger = ledger.With(By(Phone, ++step, step, body));
            Assert.Equal(expected, ledger.Sheets.Find(Sheet)!.Step);
        }

        Assert.Equal(step, ledger.Sheets.Find(Sheet)!.History.Count);
    }

    [Fact]
    public void A_plan_without_flash_goes_straight_to_the_exposure()
        => Assert.Equal(SheetStep.Expose, Of(new PlanMade { Sheet = Sheet, ExposureSeconds = 60 }).Step);

    [Fact]
    public void A_tone_read_again_keeps_its_place_and_a_removed_one_goes()
    {
        var other = Read(5) with { Tone = Id(903) };
        var sheet = Of(Read(100), other, Read(200));
        Assert.Equal([200, 5], sheet.Tones.Select(tone => tone.Body.LuminanceCandelasPerSquareMetre));
        Assert.Equal(5, Assert.Single(Of(Read(100), other, new ToneRemoved { Sheet = Sheet, Tone = Tone }).Tones).Body.LuminanceCandelasPerSquareMetre);
    }

    [Fact]
    public void What_is_void_has_no_effect_and_stays_in_the_journal()
    {
        var entries = Phoned((0, Read(100)), (1, Read(200)), (2, new EntryVoided { Entry = Id(2) }));
        var ledger = Ledger.Of(EntrySet.Of(entries));
        Assert.Equal(100, Assert.Single(ledger.Sheets.Find(Sheet)!.Tones).Body.LuminanceCandelasPerSquareMetre);
        Assert.Equal(1, ledger.VoidCount);
        Assert.Equal(3, ledger.Entries.Count);
    }

    [Fact]
    public void A_voiding_by_a_device_whose_clock_is_behind_still_holds()
    {
        var ledger = Ledger.Of(EntrySet.Of([By(Phone, 1, 0, Read(100)), By(Desk, 1, -7200, new EntryVoided { Entry = Id(1) })]));
        Assert.Null(ledger.Sheets.Find(Sheet));
    }

    [Fact]
    public void A_voiding_cannot_be_voided()
    {
        var ledger = Ledger.Of(EntrySet.Of(Phoned((0, Read(100)), (1, new EntryVoided { Entry = Id(1) }), (2, new EntryVoided { Entry = Id(2) }))));
        Assert.Null(ledger.Sheets.Find(Sheet));
        Assert.Equal(Id(3), Assert.Single(ledger.Unused).Entry);
    }

    [Fact]
    public void A_sheet_whose_beginning_is_void_is_withdrawn_until_it_is_said_again()
    {
        var entries = Phoned((0, new SheetStarted { Sheet = Sheet, Outing = Id(5) }), (1, Read(1)), (2, new EntryVoided { Entry = Id(1) }));
        var ledger = Ledger.Of(EntrySet.Of(entries));
        Assert.True(ledger.Sheets.Find(Sheet)!.Withdrawn);
        Assert.Empty(ledger.SheetsOf(Id(5)));
        ledger = ledger.With(By(Phone, 4, 3, new SheetStarted { Sheet = Sheet, Outing = Id(5) }));
        Assert.False(ledger.Sheets.Find(Sheet)!.Withdrawn);
        Assert.Single(ledger.SheetsOf(Id(5)));
    }

    [Fact]
    public void A_sheet_of_which_only_later_entries_have_arrived_is_not_withdrawn()
        => Assert.False(Of(Read(1)).Withdrawn);

    [Fact]
    public void An_amendment_replaces_the_body_and_voiding_it_brings_the_old_one_back()
    {
        var entries = Phoned((0, Read(100)), (1, Amend(1, Read(400))), (2, Amend(1, Read(800))));
        var ledger = Ledger.Of(EntrySet.Of(entries));
        Assert.Equal(800, ledger.Sheets.Find(Sheet)!.Tones[0].Body.LuminanceCandelasPerSquareMetre);
        ledger = ledger.With(By(Phone, 4, 3, new EntryVoided { Entry = Id(3) }));
        Assert.Equal(400, ledger.Sheets.Find(Sheet)!.Tones[0].Body.LuminanceCandelasPerSquareMetre);
        ledger = ledger.With(By(Phone, 5, 4, new EntryVoided { Entry = Id(2) }));
        Assert.Equal(100, ledger.Sheets.Find(Sheet)!.Tones[0].Body.LuminanceCandelasPerSquareMetre);
    }

    [Fact]
    public void An_amendment_that_cannot_be_read_changes_nothing_and_is_listed()
    {
        var nonsense = new EntryAmended { Entry = Id(1), Body = JsonDocument.Parse("{}").RootElement };
        var ledger = Ledger.Of(EntrySet.Of(Phoned((0, Read(100)), (1, nonsense))));
        Assert.Equal(100, ledger.Sheets.Find(Sheet)!.Tones[0].Body.LuminanceCandelasPerSquareMetre);
        Assert.Equal(Id(2), Assert.Single(ledger.Unused).Entry);
    }

    [Fact]
    public void Unknown_kinds_and_newer_versions_are_counted()
    {
        var ledger = Ledger.Of(EntrySet.Of(
        [
            Entry.CreateRaw(Id(1), Phone, 1, Noon, "moon.watched", 1, "{}"),
            Entry.CreateRaw(Id(2), Phone, 2, Noon, "moon.watched", 1, """{"a":1}"""),
            Entry.CreateRaw(Id(3), Phone, 3, Noon, EntryKind.HoleOpened, 7, "{}"),
        ]));
        Assert.Equal(2, ledger.NotUnderstood[new KindVersion("moon.watched", 1)]);
        Assert.Equal(1, ledger.NotUnderstood[new KindVersion(EntryKind.HoleOpened, 7)]);
        Assert.Empty(ledger.Unused);
        Assert.Equal(3, ledger.Entries.Count);
    }

    [Fact]
    public void A_sheet_keeps_the_version_of_its_camera()
    {
        static CameraDefined Box(double hole) => new()
        {
            Camera = OneOfEach.Camera,
            Definition = new CameraDefinition
            {
                Name = "Box A", HoleDiameterMillimetres = hole, FocalDistanceMillimetres = 63, SheetWidthMillimetres = 127, SheetHeightMillimetres = 102,
            },
        };

        var ledger = Ledger.Of(EntrySet.Of(Phoned(
            (0, new SheetStarted { Sheet = Id(1001), Camera = OneOfEach.Camera }),
            (1, Box(0.35)),
            (2, new SheetStarted { Sheet = Id(1002), Camera = OneOfEach.Camera }),
            (3, Box(0.30)),
            (4, new SheetStarted { Sheet = Id(1003), Camera = OneOfEach.Camera }))));
        Assert.Equal(
            [0.35, 0.35, 0.30],
            ledger.Sheets.All.Select(sheet => ledger.CameraOf(sheet)!.Body.HoleDiameterMillimetres));
        Assert.Equal(2, ledger.Cameras.Find(OneOfEach.Camera)!.Versions.Count);
        Assert.Null(ledger.PaperOf(ledger.Sheets.Find(Id(1001))!));
    }

    [Fact]
    public void A_bath_stands_where_the_clock_says()
    {
        var sheet = Of(
            new BathStarted { Sheet = Sheet },
            new BathStep { Sheet = Sheet, Step = BathKind.Developer, PlannedSeconds = 90 },
            new BathStep { Sheet = Sheet, Step = BathKind.Stop, PlannedSeconds = 30, SecondsAgo = 0.25 });
        var position = sheet.Bath!.PositionAt(Noon.AddSeconds(12))!;
        Assert.Equal((1, BathKind.Stop, 10.25, false), (position.Index, position.Step, position.ElapsedSeconds, position.ClockWentBack));
        Assert.Equal(0.75, sheet.Bath.SecondsIn(0, Noon.AddSeconds(12)));
        Assert.True(sheet.Bath.PositionAt(Noon.AddSeconds(-5))!.ClockWentBack);
        Assert.Equal(0, sheet.Bath.PositionAt(Noon.AddSeconds(-5))!.ElapsedSeconds);
    }

    [Fact]
    public void A_flash_is_as_long_as_stated_or_as_the_clock_says()
    {
        var byClock = Assert.Single(Of(new FlashStarted { Sheet = Sheet, PlannedSeconds = 4 }, new FlashFinished { Sheet = Sheet }).Flashes);
        Assert.Equal(1, byClock.GivenSeconds);
        var stated = Assert.Single(Of(new FlashStarted { Sheet = Sheet, PlannedSeconds = 4 }, new FlashFinished { Sheet = Sheet, GivenSeconds = 3.5 }).Flashes);
        Assert.Equal(3.5, stated.GivenSeconds);
    }

    [Fact]
    public void A_flash_under_way_has_lasted_since_it_began()
    {
        var flash = Assert.Single(Of(new FlashStarted { Sheet = Sheet, PlannedSeconds = 4 }).Flashes);
        Assert.True(flash.Running);
        Assert.Equal(7, flash.ElapsedSeconds(Noon.AddSeconds(7)));
        Assert.Equal(0, flash.ElapsedSeconds(Noon.AddSeconds(-7)));

        // Of one only its end was written down: nobody knows since when.
        var ended = Assert.Single(Of(new FlashFinished { Sheet = Sheet }).Flashes);
        Assert.Equal(0, ended.ElapsedSeconds(Noon.AddSeconds(7)));
        Assert.Null(ended.GivenSeconds);
    }

    [Fact]
    public void A_bath_without_a_step_or_after_its_end_stands_nowhere()
    {
        var begun = Of(new BathStarted { Sheet = Sheet }).Bath!;
        Assert.Equal(Noon, begun.Started!.At);
        Assert.Null(begun.PositionAt(Noon.AddSeconds(5)));
        var ended = Of(
            new BathStarted { Sheet = Sheet },
            new BathStep { Sheet = Sheet, Step = BathKind.Developer, PlannedSeconds = 90 },
            new BathFinished { Sheet = Sheet, SecondsAgo = 0.5 }).Bath!;
        Assert.Null(ended.PositionAt(Noon.AddSeconds(5)));

        // From 1 s to 2 s, told half a second late.
        Assert.Equal(0.5, ended.SecondsIn(0, Noon.AddSeconds(500)));
    }

    [Fact]
    public void A_scan_shows_a_sheet_better_than_the_photograph_of_its_subject()
    {
        var photograph = new PhotographAdded { Sheet = Sheet, ContentHash = OneOfEach.ContentHash, WidthPixels = 4, HeightPixels = 3, MediaType = "image/jpeg" };
        var hash = new string('b', OneOfEach.ContentHash.Length);
        var scan = new ScanAdded { Sheet = Sheet, ContentHash = hash, WidthPixels = 4, HeightPixels = 3, MediaType = "image/jpeg" };
        Assert.Null(Of(Read(1)).PictureHash);
        Assert.Equal(OneOfEach.ContentHash, Of(photograph).PictureHash);
        Assert.Equal(hash, Of(scan, photograph).PictureHash);
    }

    // Only the bottle knows it: somebody else's. As soon as anything else is said of it, it is one's own.
    [Fact]
    public void A_sheet_known_only_by_its_bottle_is_anothers()
    {
        var developed = new DevelopedIn { Sheet = Sheet, Bottle = Id(7), TemperatureCelsius = 20 };
        Assert.True(Of(developed).IsAnothers);
        Assert.True(Of(new FixedIn { Sheet = Sheet, Bottle = Id(8) }).IsAnothers);
        foreach (var body in new EntryBody[]
        {
            new SheetStarted { Sheet = Sheet },
            new PhotographAdded { Sheet = Sheet, ContentHash = OneOfEach.ContentHash, WidthPixels = 4, HeightPixels = 3, MediaType = "image/jpeg" },
            new FrameChosen { Sheet = Sheet, Orientation = SheetOrientation.Level },
            Read(100),
            new PlanMade { Sheet = Sheet, ExposureSeconds = 120 },
            new FlashStarted { Sheet = Sheet, PlannedSeconds = 3 },
            new HoleOpened { Sheet = Sheet },
            new BathStarted { Sheet = Sheet },
            new PrintJudged { Sheet = Sheet, Keeper = true },
            new ScanAdded { Sheet = Sheet, ContentHash = OneOfEach.ContentHash, WidthPixels = 4, HeightPixels = 3, MediaType = "image/jpeg" },
            new MotionMarked
            {
                Sheet = Sheet, Motion = Id(9), Definition = new() { Name = "wheel", How = "turns", Left = 0, Top = 0, Width = 1, Height = 1, TurnSeconds = 20 },
            },
        })
        {
            Assert.False(Of(developed, body).IsAnothers, body.Kind);
            Assert.False(Of(body).IsAnothers, body.Kind);
        }

        var withdrawn = Ledger.Of(EntrySet.Of(Phoned((0, new SheetStarted { Sheet = Sheet }), (1, developed), (2, new EntryVoided { Entry = Id(1) }))));
        Assert.False(withdrawn.Sheets.Find(Sheet)!.IsAnothers);
    }

    [Fact]
    public void Anothers_sheet_takes_no_number()
    {
        var ledger = Ledger.Of(EntrySet.Of(Phoned(
            (0, new SheetStarted { Sheet = Id(901) }),
            (1, new DevelopedIn { Sheet = Id(902), Bottle = Id(7), TemperatureCelsius = 20 }),
            (2, new SheetStarted { Sheet = Id(903) }))));
        Assert.Equal([1, 1, 2], new[] { 901, 902, 903 }.Select(id => ledger.NumberOf(Id(id))));
    }

    [Fact]
    public void What_happens_to_a_bottle_happened_when_it_is_said_to_have()
    {
        var topped = new BottleToppedUp { Bottle = Id(7), PouredMillilitres = 10, FreshMillilitres = 10, SecondsAgo = 40 };
        var developed = new DevelopedIn { Sheet = Sheet, Bottle = Id(7), TemperatureCelsius = 20, SecondsAgo = 30 };
        var bottle = Ledger.Of(EntrySet.Of(Phoned((100, topped), (200, developed)))).Bottles.Find(Id(7))!;
        Assert.Equal([60, 170], bottle.Happenings.Select(one => (one.HappenedAt - Noon).TotalSeconds));

        // Nobody has said yet what it is.
        Assert.False(bottle.InUse);
    }

    [Fact]
    public void A_bottle_is_in_use_from_its_mixing_to_its_discarding()
    {
        var mixed = new BottleMixed { Bottle = Id(7), Contents = BottleContents.Fixer, Name = "fixer", VolumeMillilitres = 500 };
        Assert.True(Ledger.Of(EntrySet.Of(Phoned((0, mixed)))).Bottles.Find(Id(7))!.InUse);
        Assert.False(Ledger.Of(EntrySet.Of(Phoned((0, mixed), (1, new BottleDiscarded { Bottle = Id(7) })))).Bottles.Find(Id(7))!.InUse);
    }

    [Fact]
    public void An_outing_is_withdrawn_with_its_only_beginning()
    {
        var started = new OutingStarted { Outing = Id(5), Name = "canal" };
        var entries = Phoned((0, started), (1, new EntryVoided { Entry = Id(1) }));
        var ledger = Ledger.Of(EntrySet.Of(entries));
        Assert.True(ledger.Outings.Find(Id(5))!.Withdrawn);
        Assert.False(ledger.With(By(Phone, 3, 2, started)).Outings.Find(Id(5))!.Withdrawn);

        // Said twice and once taken back, it stands.
        var twice = Ledger.Of(EntrySet.Of(Phoned((0, started), (1, started), (2, new EntryVoided { Entry = Id(2) }))));
        Assert.False(twice.Outings.Find(Id(5))!.Withdrawn);
    }

    [Fact]
    public void The_last_amendment_that_can_be_read_holds()
    {
        var nonsense = new EntryAmended { Entry = Id(1), Body = JsonDocument.Parse("{}").RootElement };
        var ledger = Ledger.Of(EntrySet.Of(Phoned((0, Read(100)), (1, Amend(1, Read(400))), (2, nonsense))));
        Assert.Equal(400, ledger.Sheets.Find(Sheet)!.Tones[0].Body.LuminanceCandelasPerSquareMetre);
        Assert.Equal(Id(3), Assert.Single(ledger.Unused).Entry);
    }

    [Fact]
    public void An_amendment_can_be_voided_but_not_amended()
    {
        var ledger = Ledger.Of(EntrySet.Of(Phoned((0, Read(100)), (1, Amend(1, Read(400))), (2, Amend(2, Read(800))))));
        Assert.Equal(400, ledger.Sheets.Find(Sheet)!.Tones[0].Body.LuminanceCandelasPerSquareMetre);
        Assert.Equal("A voiding cannot be voided or amended, nor an amendment amended; say it again instead.", Assert.Single(ledger.Unused).Sentence);
        var voided = Ledger.Of(EntrySet.Of(Phoned((0, Read(100)), (1, Amend(1, Read(400))), (2, new EntryVoided { Entry = Id(2) }))));
        Assert.Empty(voided.Unused);
    }

    [Fact]
    public void An_entry_that_cannot_be_read_is_listed()
    {
        var ledger = Ledger.Of(EntrySet.Of([Entry.CreateRaw(Id(1), Phone, 1, Noon, EntryKind.HoleOpened, 1, "{}")]));
        Assert.Equal(Id(1), Assert.Single(ledger.Unused).Entry);
        Assert.Empty(ledger.NotUnderstood);
    }

    [Fact]
    public void A_voiding_that_comes_before_what_it_voids_holds_when_that_comes()
    {
        var ledger = Ledger.Empty.With(By(Desk, 1, 0, new EntryVoided { Entry = Id(1) })).With(By(Phone, 1, 10, Read(100)));
        Assert.Null(ledger.Sheets.Find(Sheet));
        Assert.Equal(1, ledger.VoidCount);
    }

    // A few, and so many that the whole is folded anew.
    [Theory]
    [InlineData(3)]
    [InlineData(200)]
    public void What_is_there_already_changes_nothing(int count)
    {
        var entries = Phoned([.. Enumerable.Range(0, count).Select(i => ((double)i, (EntryBody)Read(i + 1)))]);
        var ledger = Ledger.Of(EntrySet.Of(entries));
        Assert.Same(ledger, ledger.With(entries));
        Assert.Equal(count, Ledger.Empty.With(entries).Sheets.Find(Sheet)!.Tones[0].Body.LuminanceCandelasPerSquareMetre);
    }

    /// <summary>The sheet after these bodies, one a second from noon on.</summary>
    private static Sheet Of(params EntryBody[] bodies)
        => Ledger.Of(EntrySet.Of(Phoned([.. bodies.Select((body, i) => ((double)i, body))]))).Sheets.Find(Sheet)!;

    private static ToneRead Read(double luminance)
        => new() { Sheet = Sheet, Tone = Tone, Name = "wall", LuminanceCandelasPerSquareMetre = luminance, Rendering = WantedRendering.Mid };

    private static EntryAmended Amend(int entry, EntryBody body)
        => new() { Entry = Id(entry), Body = JsonDocument.Parse(BodyJson.Write(body)).RootElement };
}
