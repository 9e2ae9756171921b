using System.Net;
using System.Text.Json;
using Foramen.Home.Tests.Faults;
using Foramen.Home.Tests.TestKit;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Sync;
using Foramen.Storage;
using Npgsql;

namespace Foramen.Home.Tests.Workshops;

/// <summary>A workshop over HTTP, on both databases: who is given what, who may write what, and what leaving and removing do.</summary>
public sealed class WorkshopTests(Servers servers)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H11")]
    public async Task Each_sees_own_sheets_all_share_papers_chemistry_and_places_and_the_leader_sees_all(bool postgres)
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres);
        var (leader, ada, ben) = (stage.Leader, stage.Ada, stage.Ben);
        var bottle = leader.NewId();
        var place = leader.Write(Place(leader));
        var warm = leader.Write(new BottleWarmthRead { Bottle = bottle, TemperatureCelsius = 19 });
        var leadersOuting = leader.Write(new OutingStarted { Outing = leader.NewId(), Name = "Alone at the weir" });
        var leadersSheet = leader.Write(new SheetStarted { Sheet = leader.NewId(), Name = "The weir" });
        await leader.MeetAsync();

        var (adas, bens) = (ada.NewId(), ben.NewId());
        var adaStarts = ada.Write(new SheetStarted { Sheet = adas, Name = "The elevator" });
        var adaJudges = ada.Write(new PrintJudged { Sheet = adas, Tones = [], Keeper = false, Note = "Mine." });
        var adaUnknown = ada.MakeRaw("moon.watched", """{ "sheet" : "01KQPP9PE0000000000000000R", "phase" :  0.50 }""");
        ada.Phone.Write([adaUnknown]);
        var benStarts = ben.Write(new SheetStarted { Sheet = bens, Name = "The lift bridge" });
        var benDevelops = ben.Write(new DevelopedIn { Sheet = bens, Bottle = bottle, TemperatureCelsius = 19 });
        var benPlace = ben.Write(Place(ben));
        await ada.MeetAsync();
        await ben.MeetAsync();
        await leader.MeetAsync();
        var leaderJudges = leader.Write(new PrintJudged { Sheet = adas, Tones = [], Keeper = true, Note = "A keeper, I think." });
        var leaderAmends = leader.Write(new EntryAmended { Entry = place.Id, Body = JsonSerializer.SerializeToElement(new { place = leader.NewId().ToString(), name = "The quay" }) });
        var leaderVoids = leader.Write(new EntryVoided { Entry = leadersSheet.Id });
        await leader.MeetAsync();
        await ada.MeetAsync();
        await ben.MeetAsync();

        Assert.Equal(Hashes(place, warm, adaStarts, adaJudges, adaUnknown, benDevelops, benPlace, leaderJudges, leaderAmends), ada.Phone.Hashes);
        Assert.Equal(Hashes(place, warm, benStarts, benDevelops, benPlace, leaderAmends), ben.Phone.Hashes);
        Entry[] all = [place, warm, leadersOuting, leadersSheet, adaStarts, adaJudges, adaUnknown, benStarts, benDevelops, benPlace, leaderJudges, leaderAmends, leaderVoids];
        Assert.Equal(Hashes(all), leader.Phone.Hashes);
        var stored = (await stage.Fixture.Home.Store!.ReadAfterAsync(0, cancellation: Cancellation)).Select(one => Convert.ToBase64String(one.Line)).Order(StringComparer.Ordinal);
        Assert.Equal(all.Select(entry => Convert.ToBase64String(Writing.Line(entry))).Order(StringComparer.Ordinal), stored);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H11")]
    public async Task Another_workshop_is_told_nothing_of_this_one(bool postgres)
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres);
        var shared = stage.Ada.Write(Place(stage.Ada));
        await stage.Ada.MeetAsync();
        using var stranger = await Person.JoinAsync(stage.Fixture, await stage.CodeAsync(await stage.OpenAsync("On the roof")), "cleo");
        await stranger.MeetAsync();
        await stage.Ben.MeetAsync();
        Assert.Empty(stranger.Phone.Hashes);
        Assert.Equal(Hashes(shared), stage.Ben.Phone.Hashes);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H12")]
    public async Task Who_left_was_removed_or_whose_workshop_ended_is_refused_from_then_on_and_the_code_with_it(bool postgres)
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres);
        using var cleo = await Person.JoinAsync(stage.Fixture, stage.Code, "cleo");
        var before = stage.Ada.Write(new SheetStarted { Sheet = stage.Ada.NewId() });
        await stage.Ada.MeetAsync();

        Assert.Equal(HttpStatusCode.NoContent, (await stage.Ada.AskAsync(HttpMethod.Delete, $"/api/devices/{stage.Ada.Id}")).StatusCode);
        Assert.Equal(HttpStatusCode.NoContent, (await stage.Leader.AskAsync(HttpMethod.Delete, $"/api/devices/{stage.Ben.Id}")).StatusCode);
        await RefusedAsync(stage.Ada);
        await RefusedAsync(stage.Ben);
        Assert.Equal(HttpStatusCode.OK, (await cleo.AskAsync(HttpMethod.Get, "/api/entries")).StatusCode);

        Assert.Equal(HttpStatusCode.NoContent, (await stage.Leader.AskAsync(HttpMethod.Delete, $"/api/workshops/{stage.Workshop}")).StatusCode);
        await RefusedAsync(cleo);
        using var late = stage.Fixture.NewClient();
        await Assert.ThrowsAsync<HttpRequestException>(() => Person.JoinAsync(stage.Fixture, stage.Code, "late"));
        Assert.Equal(HttpStatusCode.NotFound, (await stage.Leader.AskAsync(HttpMethod.Post, $"/api/workshops/{stage.Workshop}/code")).StatusCode);

        // The record of the workshop stays whole at home.
        await stage.Leader.MeetAsync();
        Assert.True(stage.Leader.Holds(before));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H12")]
    public async Task What_a_member_forges_is_refused_with_its_place_and_changes_nothing(bool postgres)
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres);
        var bens = stage.Ben.NewId();
        var begun = stage.Ben.Write(new SheetStarted { Sheet = bens });
        stage.Ben.Write(new DevelopedIn { Sheet = bens, Bottle = stage.Ben.NewId(), TemperatureCelsius = 20 });
        var hidden = stage.Leader.Write(new OutingStarted { Outing = stage.Leader.NewId(), Name = "Alone" });
        await stage.Ben.MeetAsync();
        await stage.Leader.MeetAsync();
        var there = (await stage.Fixture.Home.Store!.ConditionAsync(Cancellation)).Entries;
        var ada = stage.Ada;
        Entry[] forged =
        [
            ada.Make(new EntryVoided { Entry = hidden.Id }),
            ada.Make(new EntryAmended { Entry = begun.Id, Body = JsonSerializer.SerializeToElement(new { sheet = bens.ToString() }) }),
            ada.Make(new PrintJudged { Sheet = bens, Tones = [], Keeper = false }),
            ada.Make(new SheetStarted { Sheet = bens, Name = "Mine now" }),
            ada.MakeRaw("sheet.framed", $$"""{"note":"of a version to come","sheet":"{{bens}}"}"""),
        ];
        foreach (var entry in forged)
        {
            var answer = await ada.SendAsync(ada.Make(new SheetStarted { Sheet = ada.NewId() }), entry);
            Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
            using var json = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(Cancellation));
            Assert.Equal(("badEntry", 1), (json.RootElement.GetProperty("refusal").GetString(), json.RootElement.GetProperty("line").GetInt32()));
        }

        Assert.Equal(there, (await stage.Fixture.Home.Store!.ConditionAsync(Cancellation)).Entries);
        await ada.MeetAsync();
        Assert.False(ada.Holds(begun));
        Assert.False(ada.Holds(hidden));
    }

    [Fact]
    [Trait("Promise", "H12")]
    public async Task A_member_may_lead_nothing_and_send_nobody_away()
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres: false);
        foreach (var (method, path) in new[]
        {
            (HttpMethod.Get, "/api/workshops"), (HttpMethod.Post, "/api/workshops"), (HttpMethod.Post, $"/api/workshops/{stage.Workshop}/code"),
            (HttpMethod.Delete, $"/api/workshops/{stage.Workshop}"), (HttpMethod.Delete, $"/api/devices/{stage.Ben.Id}"), (HttpMethod.Get, "/api/devices"), (HttpMethod.Post, "/api/codes"),
        })
        {
            Assert.Equal(HttpStatusCode.Forbidden, (await stage.Ada.AskAsync(method, path, method == HttpMethod.Post ? new { name = "x" } : null)).StatusCode);
        }

        Assert.Equal(HttpStatusCode.OK, (await stage.Ben.AskAsync(HttpMethod.Get, "/api/entries")).StatusCode);
        Assert.Contains("\"workshop\":\"By the canal\"", await stage.Ada.Client.GetStringAsync("/api/home", Cancellation), StringComparison.Ordinal);
    }

    [Fact]
    [Trait("Promise", "H12")]
    public async Task A_leader_may_be_a_device_of_the_household_and_sends_away_members_only()
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres: false);
        using var code = JsonDocument.Parse(await (await stage.Leader.AskAsync(HttpMethod.Post, "/api/codes")).Content.ReadAsStringAsync(Cancellation));
        using var tablet = await Person.JoinAsync(stage.Fixture, code.RootElement.GetProperty("code").GetString()!, "tablet");
        using var second = JsonDocument.Parse(await (await stage.Leader.AskAsync(HttpMethod.Post, "/api/codes")).Content.ReadAsStringAsync(Cancellation));
        using var other = await Person.JoinAsync(stage.Fixture, second.RootElement.GetProperty("code").GetString()!, "other");
        Assert.Equal(HttpStatusCode.Forbidden, (await tablet.AskAsync(HttpMethod.Delete, $"/api/devices/{other.Id}")).StatusCode);
        Assert.Equal(HttpStatusCode.NoContent, (await tablet.AskAsync(HttpMethod.Delete, $"/api/devices/{stage.Ada.Id}")).StatusCode);
        await RefusedAsync(stage.Ada);
        using var listed = JsonDocument.Parse(await tablet.Client.GetStringAsync("/api/workshops", Cancellation));
        Assert.Equal([("ada", true), ("ben", false)], listed.RootElement[0].GetProperty("members").EnumerateArray()
            .Select(one => (one.GetProperty("name").GetString(), one.GetProperty("revoked").GetBoolean())));
    }

    [Fact]
    [Trait("Promise", "H9")]
    public async Task The_code_of_a_workshop_lets_many_in_and_only_in_time()
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres: false);
        for (var i = 0; i < 20; i++)
        {
            using var person = await Person.JoinAsync(stage.Fixture, stage.Code, $"person{i}");
        }

        stage.Fixture.Time.Advance(TimeSpan.FromHours(4.1));
        await Assert.ThrowsAsync<HttpRequestException>(() => Person.JoinAsync(stage.Fixture, stage.Code, "late"));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H11")]
    public async Task A_voiding_that_comes_before_what_it_voids_reaches_the_members_too(bool postgres)
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres);
        var place = stage.Leader.Make(Place(stage.Leader));
        var voids = stage.Leader.Make(new EntryVoided { Entry = place.Id });
        (await stage.Leader.SendAsync(voids)).EnsureSuccessStatusCode();
        await stage.Ada.MeetAsync();
        (await stage.Leader.SendAsync(place)).EnsureSuccessStatusCode();
        await stage.Ada.MeetAsync();
        Assert.Equal(Hashes(place, voids), stage.Ada.Phone.Hashes);
        // And then they are in step: nothing is sent over and over.
        Assert.Equal(new SyncReport(0, 0, 0), await stage.Ada.MeetAsync());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H11")]
    public async Task Who_handed_the_leader_a_file_before_joining_still_owns_the_sheets(bool postgres)
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres);
        var sheet = stage.Ada.NewId();
        var begun = stage.Ada.Write(new SheetStarted { Sheet = sheet });
        stage.Leader.Phone.Write([begun]);
        var judged = stage.Leader.Write(new PrintJudged { Sheet = sheet, Tones = [], Keeper = true });
        await stage.Leader.MeetAsync();
        var goesOn = stage.Ada.Write(new ToneRemoved { Sheet = sheet, Tone = stage.Ada.NewId() });
        Assert.Equal(0, (await stage.Ada.MeetAsync()).Unsendable);
        Assert.Equal(Hashes(begun, judged, goesOn), stage.Ada.Phone.Hashes);
        Assert.Equal(new SyncReport(0, 0, 0), await stage.Ada.MeetAsync());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H11")]
    public async Task A_phone_that_leaves_and_joins_again_misses_nothing(bool postgres)
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres);
        var sheet = stage.Ada.NewId();
        var begun = stage.Ada.Write(new SheetStarted { Sheet = sheet });
        await stage.Ada.MeetAsync();
        await stage.Ada.AskAsync(HttpMethod.Delete, $"/api/devices/{stage.Ada.Id}");
        await stage.Leader.MeetAsync();
        var judged = stage.Leader.Write(new PrintJudged { Sheet = sheet, Tones = [], Keeper = true });
        var place = stage.Leader.Write(Place(stage.Leader));
        await stage.Leader.MeetAsync();
        await stage.Ada.JoinAsync(stage.Code, "ada");
        await stage.Ada.MeetAsync();
        Assert.Equal(Hashes(begun, judged, place), stage.Ada.Phone.Hashes);
        Assert.Equal(new SyncReport(0, 0, 0), await stage.Ada.MeetAsync());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    [Trait("Promise", "H11")]
    public async Task A_store_of_an_earlier_version_learns_what_its_entries_are_about(bool postgres)
    {
        using var folder = new TempFolder();
        var settings = postgres ? StoreSettings.Postgres(await (await servers.PostgresAsync()).NewDatabaseAsync()) : StoreSettings.Sqlite(folder.File("journal.sqlite"));
        var (sheet, time) = (Ulid.Parse("01KQPP9PE0000000000000000R"), new DateTimeOffset(2026, 5, 3, 10, 0, 0, TimeSpan.Zero));
        var begun = Entry.Create(Ulid.From(time, new byte[10]), DeviceId.Parse("phone"), 1, time, new SheetStarted { Sheet = sheet });
        await using (var store = await JournalStore.OpenAsync(settings, cancellation: Cancellation))
        {
            await store.AppendAsync([ReceivedEntry.Of(begun)], cancellation: Cancellation);
        }

        await ForgetTopicsAsync(settings);
        await using (var store = await JournalStore.OpenAsync(settings, cancellation: Cancellation))
        {
            var workshop = await store.Workshops.OpenAsync("By the canal", time, Cancellation);
            var (ada, _) = await store.Devices.AddAsync("ada", time, workshop.Id, Cancellation);
            var forged = Entry.Create(Ulid.From(time, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10]), DeviceId.Parse("ada"), 1, time, new PrintJudged { Sheet = sheet, Tones = [], Keeper = true });
            Assert.Equal(0, await store.Workshops.RefusedAsync(ada, [ReceivedEntry.Of(forged)], Cancellation));
        }
    }

    private static async Task ForgetTopicsAsync(StoreSettings settings)
    {
        const string Forget = "update entry set about = null; delete from fact where name = 'topics'";
        if (settings.SqliteFile is { } file)
        {
            await using var connection = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={file};Pooling=false");
            await connection.OpenAsync(Cancellation);
            await using var command = connection.CreateCommand();
            command.CommandText = Forget;
            await command.ExecuteNonQueryAsync(Cancellation);
        }
        else
        {
            await using var source = NpgsqlDataSource.Create(settings.PostgresConnection!);
            await using var command = source.CreateCommand(Forget);
            await command.ExecuteNonQueryAsync(Cancellation);
        }
    }

    private static PlaceDefined Place(Person person) => new() { Place = person.NewId(), Name = "The basin", LatitudeDegrees = 52.3, LongitudeDegrees = 5.1 };

    private static string[] Hashes(params Entry[] entries) => [.. entries.Select(entry => entry.Hash).Order(StringComparer.Ordinal)];

    private static async Task RefusedAsync(Person person)
    {
        Assert.Equal(HttpStatusCode.Unauthorized, (await person.AskAsync(HttpMethod.Get, "/api/entries")).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await person.SendAsync(person.Make(new SheetStarted { Sheet = person.NewId() }))).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await person.AskAsync(HttpMethod.Get, $"/api/pictures/{new string('a', 64)}")).StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, (await person.AskAsync(HttpMethod.Post, "/api/pictures/missing", new { hashes = Array.Empty<string>() })).StatusCode);
    }
}
