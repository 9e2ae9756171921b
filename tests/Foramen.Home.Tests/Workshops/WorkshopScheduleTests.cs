using System.Text.Json;
using CsCheck;
using Foramen.Home.Tests.TestKit;
using Foramen.Journal;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Sync;

namespace Foramen.Home.Tests.Workshops;

/// <summary>Random writing and meeting of a leader and the people of two workshops: in the end everyone holds what the rule gives them, no more and no less.</summary>
public sealed class WorkshopScheduleTests(Servers servers)
{
    private const int Leader = 0;
    private static readonly int[] Groups = [0, 1, 1, 2];

    // Who does it, what, and which of what is there.
    private static readonly Gen<(int Who, int What, int Which)[]> Schedules = Gen.Select(Gen.Int[0, 3], Gen.Int[0, 9], Gen.Int[0, 99]).Array[10, 60];

    [Fact]
    [Trait("Promise", "H11")]
    public Task Whatever_is_written_and_whoever_meets_when_everyone_ends_with_exactly_their_part()
        => Schedules.SampleAsync(RunAsync, iter: 25, threads: 1);

    private async Task RunAsync((int Who, int What, int Which)[] schedule)
    {
        await using var stage = await WorkshopStage.StartAsync(servers, postgres: false);
        using var cleo = await Person.JoinAsync(stage.Fixture, await stage.CodeAsync(await stage.OpenAsync("On the roof")), "cleo");
        Person[] people = [stage.Leader, stage.Ada, stage.Ben, cleo];
        var written = new List<(int By, Entry Entry)>();
        foreach (var (who, what, which) in schedule)
        {
            if (what < 4)
            {
                await people[who].MeetAsync();
            }
            else if (BodyOf(what, which, people[who], written.FindAll(one => people[who].Holds(one.Entry)).ConvertAll(one => one.Entry)) is { } body)
            {
                written.Add((who, people[who].Write(body)));
            }
        }

        for (var round = 0; round < 2; round++)
        {
            foreach (var person in people)
            {
                Assert.Equal(0, (await person.MeetAsync()).Unsendable);
            }
        }

        for (var who = 0; who < people.Length; who++)
        {
            var seen = written.Where(one => Sees(who, one, written)).Select(one => one.Entry.Hash).Order(StringComparer.Ordinal);
            Assert.Equal(seen, people[who].Phone.Hashes);
            Assert.Equal(new SyncReport(0, 0, 0), await people[who].MeetAsync());
        }
    }

    private static EntryBody? BodyOf(int what, int which, Person person, List<Entry> held)
    {
        var one = held.Count == 0 ? null : held[which % held.Count];
        var sheets = held.Select(entry => entry.ReadBody().Body).OfType<SheetStarted>().ToList();
        return what switch
        {
            4 => new SheetStarted { Sheet = person.NewId() },
            5 => new PlaceDefined { Place = person.NewId(), Name = "The basin" },
            6 => new OutingStarted { Outing = person.NewId(), Name = "Alone" },
            7 when sheets.Count > 0 => new PrintJudged { Sheet = sheets[which % sheets.Count].Sheet, Tones = [], Keeper = true },
            8 when one is not null => new EntryVoided { Entry = one.Id },
            9 when one is not null => new EntryAmended { Entry = one.Id, Body = JsonSerializer.SerializeToElement(new { note = "otherwise" }) },
            _ => null,
        };
    }

    // The rule of docs/adr/0021, said over again for a list in memory.
    private static bool Sees(int who, (int By, Entry Entry) one, List<(int By, Entry Entry)> all)
    {
        if (who == Leader || Directly(who, one, all))
        {
            return true;
        }

        return Target(one.Entry, all) is { } target
            && (Directly(who, target, all)
                || (one.Entry.Kind == EntryKind.EntryVoided && target.Entry.Kind == EntryKind.EntryAmended && Target(target.Entry, all) is { } further && Directly(who, further, all)));
    }

    private static bool Directly(int who, (int By, Entry Entry) one, List<(int By, Entry Entry)> all)
        => one.By == who
            || (one.Entry.Kind == EntryKind.PlaceDefined && (one.By == Leader || Groups[one.By] == Groups[who]))
            || (one.Entry.ReadBody().Body is SheetBody said && all.Exists(other => other.By == who && other.Entry.ReadBody().Body is SheetStarted begun && begun.Sheet == said.Sheet));

    private static (int By, Entry Entry)? Target(Entry entry, List<(int By, Entry Entry)> all)
    {
        Ulid? id = entry.ReadBody().Body switch { EntryVoided said => said.Entry, EntryAmended said => said.Entry, _ => null };
        return id is { } target && all.Exists(one => one.Entry.Id == target) ? all.Find(one => one.Entry.Id == target) : null;
    }
}
