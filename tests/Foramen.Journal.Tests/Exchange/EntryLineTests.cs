using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Foramen.Engine.Quantities;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Journal.Tests.TestKit;

namespace Foramen.Journal.Tests.Exchange;

public sealed class EntryLineTests
{
    private static IReadOnlyList<string> Demo { get; } =
        [.. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "canal-basin.foramen.jsonl")).Skip(1).Where(line => line.Length > 0)];

    [Fact]
    public void A_line_read_on_trust_is_what_it_is_read_with_care()
    {
        Assert.NotEmpty(Demo);
        foreach (var line in Demo)
        {
            var (trusted, careful) = (EntryLine.ReadTrusted(line), EntryLine.Read(line));
            Assert.Equal(
                (careful.Id, careful.Device, careful.Sequence, careful.At, careful.At.Offset, careful.Kind, careful.Version, careful.Body, careful.RedactedFrom, careful.Hash),
                (trusted.Id, trusted.Device, trusted.Sequence, trusted.At, trusted.At.Offset, trusted.Kind, trusted.Version, trusted.Body, trusted.RedactedFrom, trusted.Hash));
            Assert.True(trusted.IsIntact());
        }
    }

    // Whatever character is changed or cut off: it is refused at once, or found by its hash later.
    [Fact]
    public void Damage_is_refused_at_once_or_found_later()
    {
        var line = Demo[3];
        for (var i = 0; i < line.Length; i++)
        {
            foreach (var damaged in (string[])[line[..i], line[..i] + (line[i] == '1' ? '2' : '1') + line[(i + 1)..]])
            {
                try
                {
                    Assert.False(EntryLine.ReadTrusted(damaged).IsIntact(), damaged);
                }
                catch (RefusalException refusal)
                {
                    Assert.NotEmpty(refusal.Message);
                }
            }
        }
    }

    [Theory]
    [InlineData("2026-02-29T12:00:00.000Z")]
    [InlineData("2100-02-29T12:00:00.000Z")]
    [InlineData("2026-13-01T12:00:00.000Z")]
    [InlineData("2026-00-03T12:00:00.000Z")]
    [InlineData("2026-05-00T12:00:00.000Z")]
    [InlineData("2026-04-31T12:00:00.000Z")]
    [InlineData("2026-05-03T24:00:00.000Z")]
    [InlineData("2026-05-03T12:60:00.000Z")]
    [InlineData("2026-05-03T12:00:60.000Z")]
    [InlineData("2026-05-0xT12:00:00.000Z")]
    [InlineData("202/-05-03T12:00:00.000Z")]
    [InlineData("2026-05-03T12:00:00.0:0Z")]
    [InlineData("2026-05-03 12:00:00.000Z")]
    [InlineData("2026-05-03T12:00:00.000z")]
    [InlineData("2026-05-03T12:00:00.00Z")]
    [InlineData("2026-05-03T12:00:00.000")]
    [InlineData("2026/05/03T12:00:00.000Z")]
    [InlineData("0000-05-03T12:00:00.000Z")]
    [InlineData("1969-12-31T23:59:59.999Z")]
    [InlineData("2200-01-01T00:00:00.000Z")]
    [InlineData("")]
    public void What_is_no_instant_is_refused(string at)
    {
        // With a hash that is not looked at, so that nothing but the instant is wrong.
        var refused = Assert.Throws<RefusalException>(() => EntryLine.Read(At(at), HashCheck.Later));
        Assert.Contains($"“{at}” is not an instant", refused.Message, StringComparison.Ordinal);
        Assert.Contains("is not an instant", Assert.Throws<RefusalException>(() => EntryLine.ReadTrusted(At(at))).Message, StringComparison.Ordinal);
    }

    // RFC 3339 in UTC, to the millisecond, from 1970 to 2199; read here by .NET's own reader of that form.
    [Theory]
    [InlineData("1970-01-01T00:00:00.000Z")]
    [InlineData("2199-12-31T23:59:59.999Z")]
    [InlineData("2024-02-29T09:08:07.006Z")]
    [InlineData("2000-02-29T23:00:00.100Z")]
    [InlineData("2026-01-31T00:59:00.010Z")]
    [InlineData("2026-04-30T12:00:59.999Z")]
    public void An_instant_is_read_to_the_millisecond(string at)
    {
        var expected = DateTimeOffset.ParseExact(at, "yyyy-MM-dd'T'HH:mm:ss.fffK", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(expected, EntryLine.Read(At(at), HashCheck.Later).At);
        Assert.Equal(expected, EntryLine.ReadTrusted(At(at)).At);
    }

    [Theory]
    [InlineData(-840, true)]
    [InlineData(840, true)]
    [InlineData(-841, false)]
    [InlineData(841, false)]
    public void A_clock_is_at_most_fourteen_hours_from_UTC(int minutes, bool good)
    {
        var line = With("offsetMinutes", minutes.ToString(System.Globalization.CultureInfo.InvariantCulture));
        if (good)
        {
            Assert.Equal(TimeSpan.FromMinutes(minutes), EntryLine.Read(line, HashCheck.Later).At.Offset);
            Assert.Equal(TimeSpan.FromMinutes(minutes), EntryLine.ReadTrusted(line).At.Offset);
        }
        else
        {
            Assert.Contains($"{minutes} min", Assert.Throws<RefusalException>(() => EntryLine.Read(line, HashCheck.Later)).Message, StringComparison.Ordinal);
        }
    }

    public static TheoryData<string> Members => ["id", "device", "sequence", "at", "offsetMinutes", "kind", "version", "body", "hash"];

    [Theory]
    [MemberData(nameof(Members))]
    public void A_member_that_is_missing_doubled_or_of_another_kind_is_named(string member)
    {
        var line = Demo[0];
        var text = JsonNode.Parse(line)![member]!.ToJsonString(Plain);
        var said = $"\"{member}\":{text}";
        Assert.Contains(said, line, StringComparison.Ordinal);
        Refused(line.Replace(said, "", StringComparison.Ordinal).Replace(",,", ",", StringComparison.Ordinal).Replace("{,", "{", StringComparison.Ordinal).Replace(",}", "}", StringComparison.Ordinal), $"no “{member}”");
        Refused(line.Replace(said, $"{said},{said}", StringComparison.Ordinal), $"“{member}” twice");
        Refused(line.Replace(said, $"\"{member}\":true", StringComparison.Ordinal), $"“{member}” should be a");
        Refused(line.Replace(said, $"\"{member}\":null", StringComparison.Ordinal), $"“{member}” should be a");
        Refused(line.Replace(said, $"\"{member}\":[{text}]", StringComparison.Ordinal), $"“{member}” should be a");
    }

    [Fact]
    public void What_is_no_entry_is_refused_with_what_is_wrong()
    {
        var line = Demo[0];
        var hash = JsonNode.Parse(line)!["hash"]!.GetValue<string>();
        Refused("", "not JSON");
        Refused("[1]", "should be one JSON object");
        Refused("7", "should be one JSON object");
        Refused(line + " {}", "not JSON");
        Refused(line[..^1], "not JSON");
        Refused(line.Replace(hash, hash.ToUpperInvariant(), StringComparison.Ordinal), "64 lower-case hexadecimal digits");
        Refused(line.Replace(hash, hash[..63], StringComparison.Ordinal), "64 lower-case hexadecimal digits");
        Refused(line.Replace("\"kind\":\"", "\"kind\":\"\\ud800", StringComparison.Ordinal), "not Unicode");
        Refused(line.Replace("\"kind\":", "\"redactedFrom\":\"abc\",\"kind\":", StringComparison.Ordinal), "hash of the full entry");
        Refused(line.Replace("\"kind\":", "\"redactedFrom\":7,\"kind\":", StringComparison.Ordinal), "“redactedFrom” should be a text");
        Refused(line.Replace("\"kind\":", $"\"{new string('k', 41)}\":7,\"kind\":", StringComparison.Ordinal), $"“{new string('k', 40)}…”");
        Refused(line.Replace("\"kind\":", $"\"{new string('k', 40)}\":7,\"kind\":", StringComparison.Ordinal), $"“{new string('k', 40)}”");
        Refused(With("version", "0"), "schema version");
        Refused(With("version", "-3000000000"), "schema version");
        Assert.Contains("not UTF-8", Assert.Throws<RefusalException>(() => EntryLine.Read([.. "{\"id\":\""u8, 0xFF, .. "\"}"u8])).Message, StringComparison.Ordinal);
        Assert.Equal(int.MaxValue, EntryLine.Read(With("version", "3000000000"), HashCheck.Later).Version);
    }

    [Fact]
    public void A_body_is_one_line_of_at_most_so_many_bytes()
    {
        Assert.Contains("line break", Assert.Throws<RefusalException>(() => EntryLine.Read(With("body", "{\n}"))).Message, StringComparison.Ordinal);
        Assert.Contains("line break", Assert.Throws<RefusalException>(() => EntryLine.Read(With("body", "{\r}"))).Message, StringComparison.Ordinal);
        var most = Filled(Entry.MaxBodyBytes);
        Assert.Equal(most, EntryLine.Read(With("body", most), HashCheck.Later).Body);
        Assert.Contains("1047553 bytes", Assert.Throws<RefusalException>(() => EntryLine.Read(With("body", Filled(Entry.MaxBodyBytes + 1)), HashCheck.Later)).Message, StringComparison.Ordinal);

        static string Filled(int bytes) => "{\"a\":\"" + new string('x', bytes - 8) + "\"}";
    }

    // docs/journal-format.md: a line nests at most 64 levels, so a body 63.
    [Theory]
    [InlineData(62, true)]
    [InlineData(63, false)]
    public void A_line_nests_at_most_sixty_four_levels(int lists, bool good)
    {
        var line = With("body", "{\"a\":" + new string('[', lists) + new string(']', lists) + "}");
        Assert.Equal(good, Record.Exception(() => EntryLine.Read(line, HashCheck.Later)) is null);
    }

    [Fact]
    public void On_trust_neither_body_nor_hash_is_looked_at()
    {
        foreach (var entry in (Entry[])[Small("{}"), Small("""{"a":"body"}"""), Entry.CreateRaw(Make.Id(1), Make.Phone, 1, Make.Noon, "a.b", 1, "{}", new string('a', 64))])
        {
            var line = EntryLine.Write(entry);
            Assert.Equal(line, EntryLine.Write(EntryLine.ReadTrusted(line)));
        }

        var damaged = EntryLine.Write(Small("""{"a":1}""")).Replace("{\"a\":1}", "{\"a\":2}", StringComparison.Ordinal);
        Assert.False(EntryLine.ReadTrusted(damaged).IsIntact());
        damaged = EntryLine.Write(Small("{}"));
        damaged = damaged[..^3] + (damaged[^3] == '0' ? '1' : '0') + damaged[^2..];
        Assert.False(EntryLine.ReadTrusted(damaged).IsIntact());
        Assert.Throws<RefusalException>(() => EntryLine.Read(damaged));
        // What says that it was shortened is no line as it is usually written; it is looked at.
        Assert.Throws<RefusalException>(() => EntryLine.ReadTrusted(EntryLine.Write(Entry.CreateRaw(Make.Id(1), Make.Phone, 1, Make.Noon, "a.b", 1, """{"a":1}""", new string('a', 64)))
            .Replace("{\"a\":1}", "{\"a\":2}", StringComparison.Ordinal)));

        static Entry Small(string body) => Entry.CreateRaw(Make.Id(1), Make.Phone, 1, Make.Noon, "a.b", 1, body);
    }

    // A space between two members changes nothing of an entry; a line with one is not as this code writes it.
    [Fact]
    public void A_line_that_another_program_wrote_is_the_same_entry_on_trust()
    {
        var line = EntryLine.Write(Entry.CreateRaw(Make.Id(1), Make.Phone, 1, Make.Noon, "a.b", 1, """{"a":"x","b":[1]}"""));
        var entry = EntryLine.Read(line);
        var body = line.IndexOf("\"body\":", StringComparison.Ordinal) + 7;
        var quoted = false;
        var tried = 0;
        for (var i = 0; i < line.Length; i++)
        {
            quoted ^= line[i] == '"';
            // Not within texts and numbers, and not within the body, which is kept to the byte.
            if (quoted || (i >= body && i < line.IndexOf(",\"hash\"", StringComparison.Ordinal)) || line[i] is not (',' or ':' or '{' or '"' or '}'))
            {
                continue;
            }

            tried++;
            var spaced = line[..(i + 1)] + " " + line[(i + 1)..];
            Assert.Equal(entry, EntryLine.Read(spaced));
            Assert.Equal(line, EntryLine.Write(EntryLine.ReadTrusted(spaced)));
        }

        Assert.True(tried > 30);
        var members = JsonNode.Parse(line)!.AsObject();
        var turned = "{" + string.Join(',', members.Reverse().Select(member => $"\"{member.Key}\":{member.Value!.ToJsonString(Plain)}")) + "}";
        Assert.Equal(line, EntryLine.Write(EntryLine.ReadTrusted(turned)));
    }

    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static string At(string at)
    {
        var line = Demo[0];
        var start = line.IndexOf("\"at\":\"", StringComparison.Ordinal) + 6;
        return line[..start] + at + line[line.IndexOf('"', start)..];
    }

    private static string With(string member, string json)
    {
        var line = Demo[0];
        return line.Replace($"\"{member}\":{JsonNode.Parse(line)![member]!.ToJsonString(Plain)}", $"\"{member}\":{json}", StringComparison.Ordinal);
    }

    private static void Refused(string line, string part) => Assert.Contains(part, Assert.Throws<RefusalException>(() => EntryLine.Read(line)).Message, StringComparison.Ordinal);
}
