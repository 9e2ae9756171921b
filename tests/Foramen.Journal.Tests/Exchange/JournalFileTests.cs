using System.Text;
using System.Text.Json;
using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Fold;
using Foramen.Journal.Tests.TestKit;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Exchange;

public class JournalFileTests
{
    private static readonly byte[] Sample = JournalFile.Write(EntrySet.Of(
        [.. OneOfEach.Bodies.Take(5).Select((body, i) => By(Phone, i + 1, i, body)), Entry.CreateRaw(Id(99), Phone, 9, Noon, "moon.watched", 3, """{ "phase": 0.50, "who":"Ü 運" }""")]));

    [Fact]
    public void A_set_comes_back_as_it_went_to_the_byte()
        => GenHistory.Histories.Sample(history =>
        {
            var set = EntrySet.Of(history);
            var file = JournalFile.Write(set);
            var read = JournalFile.Read(file);
            Assert.Empty(read.BadLines);
            Assert.Equal(1, read.FormatVersion);
            var back = EntrySet.Of(read.Entries);
            Assert.Equal(Shown.Set(set), Shown.Set(back));
            Assert.Equal(set.InOrder.Select(item => item.Entry.Body), back.InOrder.Select(item => item.Entry.Body));
            Assert.Equal(file, JournalFile.Write(back));
        });

    [Fact]
    [Trait("Promise", "J5")]
    public void Kinds_of_the_future_survive_a_round_trip_untouched()
    {
        var entry = Entry.CreateRaw(Id(1), Phone, 1, Noon, "moon.watched", 12, """{ "b" : 1.50e+00,"a":[ null ],"a":"\u00fc" }""");
        var back = Assert.Single(JournalFile.Read(JournalFile.Write([entry])).Entries);
        Assert.Equal(entry.Body, back.Body);
        Assert.Equal(entry.Hash, back.Hash);
    }

    [Fact]
    [Trait("Promise", "J2")]
    public void Taking_a_file_in_twice_changes_nothing()
    {
        var set = EntrySet.Of(JournalFile.Read(Sample).Entries);
        Assert.Same(set, set.Union(JournalFile.Read(Sample).Entries));
    }

    [Fact]
    [Trait("Promise", "J6")]
    public void Nothing_that_is_there_is_overwritten()
    {
        var mine = By(Phone, 1, 0, new HoleOpened { Sheet = Id(901) });
        var theirs = By(Phone, 1, 0, new HoleClosed { Sheet = Id(901) });
        var set = EntrySet.Of([mine]).Union(JournalFile.Read(JournalFile.Write([theirs])).Entries);
        Assert.True(set.Contains(mine) && set.Contains(theirs));
        Assert.Single(set.Conflicts);
    }

    [Fact]
    [Trait("Promise", "J6")]
    public void Every_prefix_of_a_file_gives_the_whole_lines_in_it()
    {
        var whole = JournalFile.Read(Sample).Entries;
        var header = Array.IndexOf(Sample, (byte)'\n');
        for (var length = 0; length < Sample.Length; length++)
        {
            var prefix = Sample.AsSpan(0, length);
            if (length < header)
            {
                var cut = prefix.ToArray();
                Assert.Throws<RefusalException>(() => JournalFile.Read(cut));
                continue;
            }

            var read = JournalFile.Read(prefix);
            var lines = prefix.Count((byte)'\n');
            // A last line without its line break may be whole as well.
            Assert.InRange(read.Entries.Count, Math.Max(0, lines - 1), lines);
            Assert.Equal(whole.Take(read.Entries.Count), read.Entries);
            Assert.True(read.BadLineCount <= 1);
        }
    }

    [Fact]
    [Trait("Promise", "J1")]
    public void A_changed_byte_costs_its_line_and_nothing_else()
    {
        // Every byte, three changes: a bit, a quote, a line break.
        var whole = JournalFile.Read(Sample).Entries;
        for (var at = 0; at < Sample.Length; at++)
        {
            foreach (var change in new[] { (byte)(Sample[at] ^ 1), (byte)'"', (byte)'\n' })
            {
                if (change == Sample[at])
                {
                    continue;
                }

                var damaged = Sample.ToArray();
                damaged[at] = change;
                var read = JournalFile.Read(damaged);
                var missing = whole.Except(read.Entries).Count();
                // A joined line takes two with it; the header holds no entry.
                Assert.True(missing <= (Sample[at] == (byte)'\n' ? 2 : 1), $"byte {at} changed to {change} cost {missing} entries");
                Assert.Empty(read.Entries.Except(whole));
                Assert.True(missing == 0 || read.BadLineCount > 0);
            }
        }
    }

    [Fact]
    [Trait("Promise", "J6")]
    public void Any_bytes_end_in_a_result_or_a_refusal()
        => Gen.Select(Gen.Byte.Array[0, 200], Gen.Int[0, 3], Gen.Int[0, 1_000_000]).Sample((bytes, how, pick) =>
        {
            // Rubbish alone, rubbish behind the header, a piece of the file doubled, rubbish in the middle.
            var at = pick % Sample.Length;
            byte[] file = how switch
            {
                0 => bytes,
                1 => [.. "{\"foramenJournal\":1}\n"u8, .. bytes],
                2 => [.. Sample[..at], .. Sample[(at / 2)..]],
                _ => [.. Sample[..at], .. bytes, .. Sample[at..]],
            };
            try
            {
                var read = JournalFile.Read(file);
                Assert.All(read.Entries, entry => Assert.Equal(entry.Hash, EntryLine.Read(EntryLine.Write(entry)).Hash));
                Assert.All(read.BadLines, bad => Assert.False(string.IsNullOrWhiteSpace(bad.Sentence)));
            }
            catch (RefusalException e)
            {
                Assert.Contains("not a Foramen journal", e.Message);
            }
        });

    [Theory]
    [InlineData("")]
    [InlineData("hello")]
    [InlineData("{}")]
    [InlineData("[1]")]
    [InlineData("{\"foramenJournal\":0}")]
    [InlineData("{\"foramenJournal\":\"1\"}")]
    [InlineData("{\"foramenJournal\":1")]
    [InlineData("{\"foramenJournal\":1} {}")]
    public void What_is_no_journal_is_refused(string text)
        => Assert.Throws<RefusalException>(() => JournalFile.Read(Encoding.UTF8.GetBytes(text)));

    // A name that is half a character pair, written as an escape, cannot be compared with another.
    [Theory]
    [InlineData("""{"foramenJournal":1,"\ud800amenJournal":2}""")]
    [InlineData("""{"\ud800outPlaces":true,"foramenJournal":1}""")]
    public void Half_a_character_pair_in_the_header_does_not_cost_the_record(string header)
    {
        var read = JournalFile.Read(Encoding.UTF8.GetBytes(header + Encoding.UTF8.GetString(Sample)[Encoding.UTF8.GetString(Sample).IndexOf('\n')..]));
        Assert.Equal(JournalFile.Read(Sample).Entries, read.Entries);
    }

    [Fact]
    public void A_damaged_header_does_not_cost_the_record()
    {
        var text = "{\"foramenJourn" + Encoding.UTF8.GetString(Sample)[20..];
        var read = JournalFile.Read(Encoding.UTF8.GetBytes(text));
        Assert.Equal(0, read.FormatVersion);
        Assert.Equal(JournalFile.Read(Sample).Entries, read.Entries);
        Assert.Equal(1, Assert.Single(read.BadLines).Number);
    }

    [Fact]
    public void A_file_of_a_newer_format_is_read_as_far_as_it_can_be()
    {
        var lines = Encoding.UTF8.GetString(Sample).Replace("{\"foramenJournal\":1}", "{\"foramenJournal\":2,\"packed\":{\"a\":[1]}}", StringComparison.Ordinal);
        var read = JournalFile.Read(Encoding.UTF8.GetBytes(lines + "{\"reference\":1}\n"));
        Assert.Equal(2, read.FormatVersion);
        Assert.Equal(JournalFile.Read(Sample).Entries, read.Entries);
        Assert.Equal(1, read.BadLineCount);
    }

    [Fact]
    public void Line_ends_and_marks_of_other_systems_do_no_harm()
    {
        var text = "\uFEFF" + Encoding.UTF8.GetString(Sample).Replace("\n", "\r\n\r\n", StringComparison.Ordinal);
        var read = JournalFile.Read(Encoding.UTF8.GetBytes(text));
        Assert.Empty(read.BadLines);
        Assert.Equal(JournalFile.Read(Sample).Entries, read.Entries);
    }

    [Fact]
    [Trait("Promise", "J6")]
    public void Long_lines_deep_lines_and_long_files_are_bounded()
    {
        var deep = "{\"id\":" + new string('[', 200_000) + new string(']', 200_000) + "}";
        var file = Encoding.UTF8.GetBytes("{\"foramenJournal\":1}\n" + new string('x', 1_100_000) + "\n" + deep + "\n");
        var read = JournalFile.Read([.. file, .. Sample]);
        Assert.Equal(JournalFile.Read(Sample).Entries, read.Entries);
        Assert.Equal([2, 3, 4], read.BadLines.Select(bad => bad.Number));

        var few = JournalFile.Read(Sample, new ImportLimits(MaxEntries: 2));
        Assert.Equal(2, few.Entries.Count);
        Assert.Contains("more than 2", Assert.Single(few.BadLines).Sentence);

        var many = JournalFile.Read(Encoding.UTF8.GetBytes("{\"foramenJournal\":1}\n" + string.Concat(Enumerable.Repeat("x\n", 5000))));
        Assert.Equal(5000, many.BadLineCount);
        Assert.Equal(1000, many.BadLines.Count);
    }

    [Fact]
    public void What_lies_at_a_limit_is_read_and_what_lies_beyond_is_listed()
    {
        var lines = Encoding.UTF8.GetString(Sample).TrimEnd('\n').Split('\n');
        var longest = lines.Max(line => Encoding.UTF8.GetByteCount(line));
        Assert.Empty(JournalFile.Read(Sample, new ImportLimits(MaxLineBytes: longest)).BadLines);
        var cut = JournalFile.Read(Sample, new ImportLimits(MaxLineBytes: longest - 1));
        Assert.Equal($"The line has {longest} bytes; at most {longest - 1} are allowed.", Assert.Single(cut.BadLines).Sentence);
        Assert.Equal(lines.Length - 2, cut.Entries.Count);

        var whole = lines.Length - 1;
        Assert.Empty(JournalFile.Read(Sample, new ImportLimits(MaxEntries: whole)).BadLines);
        var few = JournalFile.Read(Sample, new ImportLimits(MaxEntries: whole - 2));
        Assert.Equal((whole - 2, 1, whole), (few.Entries.Count, few.BadLineCount, Assert.Single(few.BadLines).Number));
        Assert.Equal((1_048_576, 1_000_000, 1_000), (ImportLimits.Usual.MaxLineBytes, ImportLimits.Usual.MaxEntries, ImportLimits.Usual.MaxListed));
    }

    // Good lines among so much rubbish that it is no longer listed are still read, and damaged entries counted.
    [Fact]
    public void Where_no_more_bad_lines_are_listed_entries_are_still_read_and_the_bad_counted()
    {
        var lines = Encoding.UTF8.GetString(Sample).TrimEnd('\n').Split('\n');
        var text = string.Join('\n', [lines[0], "x", "y", "{x}", "{y", "y}", .. lines[1..], "z", ""]);
        var read = JournalFile.Read(Encoding.UTF8.GetBytes(text), new ImportLimits(MaxListed: 2));
        Assert.Equal(lines.Length - 1, read.Entries.Count);
        Assert.Equal([2, 3], read.BadLines.Select(bad => bad.Number));
        Assert.Equal(6, read.BadLineCount);
    }

    [Theory]
    [InlineData("""{"foramenJournal":1,"withoutPlaces":true}""", 1, true)]
    [InlineData("""{"foramenJournal":1,"withoutPlaces":false}""", 1, false)]
    [InlineData("""{"foramenJournal":1,"withoutPlaces":"yes"}""", 1, false)]
    [InlineData("""{"withoutPlaces":true,"foramenJournal":3}""", 3, true)]
    [InlineData("""{"by":{"withoutPlaces":true,"foramenJournal":9},"foramenJournal":1,"more":[{"foramenJournal":7}]}""", 1, false)]
    [InlineData(" \t{\"foramen\\u004aournal\" : 1 }\r", 1, false)]
    public void The_header_says_the_format_and_whether_places_were_left_out(string header, int format, bool withoutPlaces)
    {
        var read = JournalFile.Read(Encoding.UTF8.GetBytes(header));
        Assert.Equal((format, withoutPlaces, 0, 0), (read.FormatVersion, read.WithoutPlaces, read.Entries.Count, read.BadLineCount));
        Assert.Equal((format, withoutPlaces), (JournalFile.Read(Encoding.UTF8.GetBytes(header + "\n")).FormatVersion, JournalFile.Read(Encoding.UTF8.GetBytes(header + "\n")).WithoutPlaces));
    }

    [Theory]
    [InlineData("""{"foramenJournal":1""")]
    [InlineData("""{"foramenJournal":0,"withoutPlaces":true}""")]
    [InlineData("""{"foramenJournal":-1}""")]
    [InlineData("""{"foramenJournal":1.5}""")]
    [InlineData("""{"foramenJournal":"1"}""")]
    [InlineData("""{"foramenJournal":9999999999}""")]
    [InlineData("""{"foramenJournal":1}{}""")]
    [InlineData("""[{"foramenJournal":1}]""")]
    [InlineData("7")]
    public void What_is_no_header_is_listed_as_such_and_the_entries_behind_it_are_read(string header)
    {
        var lines = Encoding.UTF8.GetString(Sample);
        var read = JournalFile.Read(Encoding.UTF8.GetBytes(header + lines[lines.IndexOf('\n')..]));
        Assert.Equal((0, false), (read.FormatVersion, read.WithoutPlaces));
        Assert.Equal(JournalFile.Read(Sample).Entries, read.Entries);
        Assert.Equal((1, "The first line should be the header, {\"foramenJournal\":1}; it is damaged or missing."), (Assert.Single(read.BadLines).Number, read.BadLines[0].Sentence));
        Assert.Contains("{\"foramenJournal\":1", Assert.Throws<RefusalException>(() => JournalFile.Read(Encoding.UTF8.GetBytes(header))).Message);
    }

    [Fact]
    public void A_header_counts_on_the_first_line_alone()
    {
        var read = JournalFile.Read([.. Sample, .. "{\"foramenJournal\":1}\n"u8]);
        Assert.Equal(Encoding.UTF8.GetString(Sample).Count(character => character == '\n') + 1, Assert.Single(read.BadLines).Number);
        Assert.Equal("{\"foramenJournal\":1}\n", Encoding.UTF8.GetString(JournalFile.Write([])));
        Assert.Equal("{\"foramenJournal\":1,\"withoutPlaces\":true}\n", Encoding.UTF8.GetString(JournalFile.Write([], withoutPlaces: true)));
    }

    // What counts comes first and in order; what only stands in a conflict is not lost.
    [Fact]
    public void A_file_holds_what_counts_in_its_order_and_then_what_stands_in_conflict()
    {
        Entry[] all = [.. Enumerable.Range(1, 4).SelectMany(i => (Entry[])[By(Phone, i, i, new HoleOpened { Sheet = Id(901) }, id: 10 - i), By(Phone, i, i, new HoleClosed { Sheet = Id(901) }, id: 10 - i), By(Phone, i, i, new BathFinished { Sheet = Id(901) }, id: 10 - i)])];
        var set = EntrySet.Of(all);
        var read = JournalFile.Read(JournalFile.Write(set)).Entries;
        var counting = set.InOrder.Select(item => item.Entry).ToList();
        Assert.Equal(counting, read.Take(4));
        var rest = read.Skip(4).ToList();
        Assert.Equal(all.Except(counting).ToHashSet(), rest.ToHashSet());
        Assert.Equal(8, rest.Count);
        Assert.Equal(rest.OrderBy(entry => entry.Id).ThenBy(entry => entry.Hash, StringComparer.Ordinal), rest);
        Assert.Equal(JournalFile.Write(set), JournalFile.Write(EntrySet.Of(all.Reverse())));
    }

    [Fact]
    public void A_line_says_what_is_wrong_with_it()
    {
        var line = EntryLine.Write(By(Phone, 1, 0, new HoleOpened { Sheet = Id(901) }));
        Refused(line.Replace("\"sequence\":1", "\"sequence\":2", StringComparison.Ordinal), "does not match its hash");
        Refused(line.Replace("\"sequence\":1,", "", StringComparison.Ordinal), "no “sequence”");
        Refused(line.Replace("\"sequence\":1", "\"sequence\":1.5", StringComparison.Ordinal), "whole number");
        Refused(line.Replace("\"sequence\":1", "\"sequence\":1,\"sequence\":1", StringComparison.Ordinal), "twice");
        Refused(line.Replace("\"sequence\":1", "\"sequence\":1,\"colour\":1", StringComparison.Ordinal), "“colour”");
        Refused(line.Replace("\"offsetMinutes\":120", "\"offsetMinutes\":9000", StringComparison.Ordinal), "offset");
        Refused(line.Replace("2026-05-03T10", "2026-05-03T25", StringComparison.Ordinal), "instant");
        Refused(line.Replace("\"body\":{", "\"body\":7,\"x\":{", StringComparison.Ordinal), "“body” should be a JSON object");
        Refused(line + "x", "not JSON");

        static void Refused(string text, string part) => Assert.Contains(part, Assert.Throws<RefusalException>(() => EntryLine.Read(text)).Message);
    }

    [Fact]
    public void A_hash_that_is_checked_later_shows_the_damage_then()
    {
        var line = EntryLine.Write(By(Phone, 1, 0, new HoleOpened { Sheet = Id(901) }));
        Assert.True(EntryLine.Read(line, HashCheck.Later).IsIntact());
        Assert.False(EntryLine.Read(line.Replace("\"sequence\":1", "\"sequence\":2", StringComparison.Ordinal), HashCheck.Later).IsIntact());
    }

    [Fact]
    public void A_line_is_what_the_format_document_shows()
    {
        var entry = Entry.CreateRaw(Ulid.Parse("01JTAMR500000000000000000R"), Phone, 7, Noon.AddMilliseconds(5), "hole.closed", 1, """{"sheet":"01JTAMR500000000000000000R"}""");
        Assert.Equal(
            """{"id":"01JTAMR500000000000000000R","device":"phone","sequence":7,"at":"2026-05-03T10:00:00.005Z","offsetMinutes":120,"kind":"hole.closed","version":1,"body":{"sheet":"01JTAMR500000000000000000R"},"hash":""" + $"\"{entry.Hash}\"}}",
            EntryLine.Write(entry));
    }

    [Fact]
    [Trait("Promise", "J9")]
    public void Places_are_left_out_on_request_and_the_full_entries_stay_the_ones_that_count()
    {
        var full = EntrySet.Of([.. OneOfEach.Bodies.Select((body, i) => By(Phone, i + 1, i, body)), Entry.CreateRaw(Id(99), Phone, 99, Noon, "moon.watched", 1, """{"x":[{"GPSAltitude":{"a":1}, "longitude" : 5.25 }],"latitude":52.5}""")]);
        var file = JournalFile.Write(full, withoutPlaces: true);
        var text = Encoding.UTF8.GetString(file);
        Assert.DoesNotContain("52.5", text);
        Assert.DoesNotContain("5.25", text);
        Assert.DoesNotContain("titude", text, StringComparison.OrdinalIgnoreCase);
        var shared = JournalFile.Read(file);
        Assert.True(shared.WithoutPlaces);
        Assert.Empty(shared.BadLines);
        Assert.Equal(full.Count, shared.Entries.Count);
        Assert.Contains("\"x\":[{ }]", text);

        // What is not about places is the same entry, and taking the file back in contradicts nothing.
        Assert.Equal(3, shared.Entries.Count(entry => entry.RedactedFrom is not null));
        var both = full.Union(shared.Entries);
        Assert.Empty(both.Conflicts);
        Assert.Equal(full.InOrder, both.InOrder);
        Assert.Equal(52.5, Ledger.Of(both).Places.Find(OneOfEach.Place)!.Body.LatitudeDegrees);
        Assert.Equal(full.InOrder, EntrySet.Of(shared.Entries).Union(full.All).InOrder);
        Assert.Null(Ledger.Of(EntrySet.Of(shared.Entries)).Places.Find(OneOfEach.Place)!.Body.LatitudeDegrees);
    }

    [Fact]
    public void Leaving_places_out_keeps_all_else_to_the_byte_and_stays_json()
    {
        var member = OneOf("\"a\":1.50", "\"latitudeDegrees\":52.5", "\"longitude\": [1,{\"x\":\"}\"}]", "\"gpsTime\" :\"é\"", "\"b\":{\"c\":\"\\u00fc\"}", "\"d\":{\"altitude\":1}");
        var comma = OneOf(",", " , ", ", ");
        Gen.Select(member.Array[0, 6], comma.Array[6]).Sample((members, commas) =>
        {
            var body = "{" + string.Concat(members.Select((one, i) => (i > 0 ? commas[i - 1] : "") + one)) + "}";
            var without = PlaceRemoval.From(Entry.CreateRaw(Id(1), Phone, 1, Noon, "a.b", 1, body));
            var kept = members.Where(one => one[1] is 'a' && !one.Contains("titude", StringComparison.Ordinal) || one[1] is 'b' or 'd').Select(one => one.Replace("\"altitude\":1", "", StringComparison.Ordinal));
            // Spaces beside commas may stay or go with a member; all else is as it was.
            Assert.Equal("{" + string.Join(",", kept).Replace(" ", "", StringComparison.Ordinal) + "}", without.Body.Replace(" ", "", StringComparison.Ordinal));
            using var parsed = JsonDocument.Parse(without.Body);
            Assert.Same(without, PlaceRemoval.From(without));
        });
    }

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    [Fact]
    [Trait("Promise", "J6")]
    public void Damaged_journals_end_in_a_result_or_a_refusal_within_bounds()
        => Mutations.Survives([Sample], file => JournalFile.Read(file), 64_000_000, 3_000);
}
