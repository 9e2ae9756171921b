using Foramen.Engine.Quantities;
using Foramen.Journal.Exchange;

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
    [InlineData("2026-13-01T12:00:00.000Z")]
    [InlineData("2026-05-03T24:00:00.000Z")]
    [InlineData("2026-05-03T12:00:60.000Z")]
    [InlineData("2026-05-0xT12:00:00.000Z")]
    [InlineData("0000-05-03T12:00:00.000Z")]
    public void What_is_no_instant_is_refused(string at)
    {
        var line = Demo[0];
        var start = line.IndexOf("\"at\":\"", StringComparison.Ordinal) + 6;
        Assert.Throws<RefusalException>(() => EntryLine.Read(line[..start] + at + line[(start + at.Length)..]));
    }
}
