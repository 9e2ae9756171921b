using CsCheck;
using Foramen.Home.Tests.Faults;
using Foramen.Journal;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Foramen.Storage;

namespace Foramen.Home.Tests.Storage;

/// <summary>What a store must do whatever database it lies in; run for each of them.</summary>
public abstract class JournalStoreTests : IAsyncLifetime
{
    private StoreSettings settings = null!;

    internal static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    internal JournalStore Store { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        settings = await NewStoreAsync();
        Store = await JournalStore.OpenAsync(settings, cancellation: Cancellation);
    }

    public virtual async ValueTask DisposeAsync()
    {
        await Store.DisposeAsync();
        GC.SuppressFinalize(this);
    }

    /// <summary>Settings of a store that is still empty.</summary>
    private protected abstract Task<StoreSettings> NewStoreAsync();

    [Fact]
    [Trait("Promise", "H3")]
    public async Task An_entry_sent_again_has_the_effect_of_once()
    {
        var batch = Writing.Batch("phone", 1, 10);
        var first = await Store.AppendAsync(batch, cancellation: Cancellation);
        var again = await Store.AppendAsync([.. batch, .. batch, .. Writing.Batch("phone", 11, 1)], cancellation: Cancellation);
        Assert.Equal((10, 0), (first.Taken, first.Known));
        Assert.Equal((1, 20), (again.Taken, again.Known));
        Assert.Equal(first.After, again.Before);
        Assert.Equal(11, (await Store.ConditionAsync(Cancellation)).Entries);
        Assert.Equal(again.After, (await Store.AppendAsync(batch, cancellation: Cancellation)).After);
    }

    [Fact]
    [Trait("Promise", "H4")]
    public async Task Lines_come_back_byte_for_byte_also_of_unknown_kinds_and_odd_spacing()
    {
        var odd = Entry.CreateRaw(Ulid.From(DateTimeOffset.UnixEpoch.AddYears(50), new byte[10]), DeviceId.Parse("x"), 1, DateTimeOffset.UnixEpoch.AddYears(50), "moon.watched", 9, """{ "a" : [1.500, "é", "\ud800"] }""");
        var line = System.Text.Encoding.UTF8.GetBytes("  " + EntryLine.Write(odd).Replace("\"version\":", "\"version\" : ", StringComparison.Ordinal)).AsSpan(2).ToArray();
        var batch = Writing.Batch("phone", 1, 3).Append(new ReceivedEntry(EntryLine.Read(line), line)).ToList();
        await Store.AppendAsync(batch, cancellation: Cancellation);
        Assert.Equal(batch.Select(one => one.Line), (await Store.ReadAfterAsync(0, cancellation: Cancellation)).Select(stored => stored.Line));
    }

    [Fact]
    [Trait("Promise", "H4")]
    public async Task Another_content_under_the_same_id_is_kept_beside_it()
    {
        var one = Writing.Entry("phone", 1);
        var other = Entry.CreateRaw(one.Id, one.Device, one.Sequence, one.At, one.Kind, 1, """{"forged":true}""");
        await Store.AppendAsync([ReceivedEntry.Of(one)], cancellation: Cancellation);
        Assert.Equal(1, (await Store.AppendAsync([ReceivedEntry.Of(other)], cancellation: Cancellation)).Taken);
        Assert.Equal(2, (await Store.ReadAfterAsync(0, cancellation: Cancellation)).Count);
    }

    [Fact]
    [Trait("Promise", "H5")]
    public async Task A_reader_goes_on_where_it_was_in_pages_of_any_size()
    {
        for (var i = 0; i < 7; i++)
        {
            await Store.AppendAsync(Writing.Batch("phone", (i * 13) + 1, 13), cancellation: Cancellation);
        }

        foreach (var limits in new[] { new ReadLimits(1, 1_000_000), new ReadLimits(5, 1_000_000), new ReadLimits(13, 1_000_000), new ReadLimits(1_000, 1), new ReadLimits(1_000, 1_700) })
        {
            var read = new List<string>();
            var cursor = "";
            for (var more = true; more;)
            {
                var page = await Store.ReadAsync(Store.Epoch, cursor, limits, cancellation: Cancellation);
                Assert.Equal(cursor, page.From.ToString());
                read.AddRange(page.Lines.Select(line => EntryLine.Read(line).Hash));
                (cursor, more) = (page.Next.ToString(), page.More);
            }

            Assert.Equal(Writing.Batch("phone", 1, 91).Select(one => one.Entry.Hash), read);
            Assert.Empty((await Store.ReadAsync(Store.Epoch, cursor, limits, cancellation: Cancellation)).Lines);
        }
    }

    [Theory]
    [InlineData("other", null)]
    [InlineData(null, "99.0000000000000001")]
    [InlineData(null, "5.0000000000000001")]
    [InlineData(null, "x'; drop table entry; --")]
    [InlineData(null, "-1.0")]
    public async Task A_cursor_that_means_nothing_here_begins_anew(string? epoch, string? cursor)
    {
        var appended = await Store.AppendAsync(Writing.Batch("phone", 1, 10), cancellation: Cancellation);
        var page = await Store.ReadAsync(epoch ?? Store.Epoch, cursor ?? appended.After.ToString(), cancellation: Cancellation);
        Assert.Equal("", page.From.ToString());
        Assert.Equal(10, page.Lines.Count);
    }

    [Fact]
    [Trait("Promise", "H5")]
    public async Task No_reader_passes_over_an_entry_while_many_write()
    {
        var reading = true;
        var seen = new List<string>();
        var reader = Task.Run(
            async () =>
            {
                var cursor = "";
                while (Volatile.Read(ref reading))
                {
                    cursor = await ReadOnAsync(cursor);
                }

                await ReadOnAsync(cursor);
            },
            Cancellation);
        await Task.WhenAll(Enumerable.Range(0, 8).Select(device => Task.Run(
            async () =>
            {
                for (var i = 0; i < 15; i++)
                {
                    await Store.AppendAsync(Writing.Batch($"dev{device}", (i * 7) + 1, 7), cancellation: Cancellation);
                }
            },
            Cancellation)));
        Volatile.Write(ref reading, false);
        await reader;
        Assert.Equal(8 * 15 * 7, seen.Count);
        Assert.Equal(seen.Count, seen.Distinct().Count());

        async Task<string> ReadOnAsync(string cursor)
        {
            var page = await Store.ReadAsync(Store.Epoch, cursor, cancellation: Cancellation);
            Assert.Equal(cursor, page.From.ToString());
            seen.AddRange(page.Lines.Select(line => EntryLine.Read(line).Hash));
            return page.Next.ToString();
        }
    }

    [Fact]
    [Trait("Promise", "H1")]
    public async Task What_was_appended_is_there_when_it_is_opened_again_under_the_same_name()
    {
        await Store.AppendAsync(Writing.Batch("phone", 1, 10), cancellation: Cancellation);
        var before = await Store.VerifyAsync(Cancellation);
        await using var again = await JournalStore.OpenAsync(settings, cancellation: Cancellation);
        Assert.Equal(Store.Epoch, again.Epoch);
        Assert.Equal(before, await again.VerifyAsync(Cancellation));
        Assert.Equal(10, before.Entries);
    }

    [Fact]
    [Trait("Promise", "H2")]
    public async Task The_database_says_itself_that_every_commit_is_kept()
    {
        var condition = await Store.ConditionAsync(Cancellation);
        Assert.True(condition.KeepsWhatItAcknowledged, condition.Durability);
    }

    [Fact]
    public async Task Any_sequence_of_appends_gives_what_a_plain_list_would()
    {
        // The model: a list in order of arrival without doubles.
        var model = new List<string>();
        await Gen.Select(Gen.Int[0, 60], Gen.Int[1, 12]).Array[1, 8].SampleAsync(
            async appends =>
            {
                foreach (var (first, count) in appends)
                {
                    var batch = Writing.Batch("phone", first + 1, count);
                    var fresh = batch.Select(one => one.Entry.Hash).Except(model).ToList();
                    var appended = await Store.AppendAsync(batch, cancellation: Cancellation);
                    Assert.Equal((fresh.Count, count - fresh.Count), (appended.Taken, appended.Known));
                    model.AddRange(fresh);
                }

                Assert.Equal(model, (await Store.ReadAfterAsync(0, cancellation: Cancellation)).Select(stored => EntryLine.Read(stored.Line).Hash));
            },
            iter: 10,
            threads: 1);
    }

    [Fact]
    [Trait("Promise", "H9")]
    public async Task A_device_is_known_by_its_token_until_it_is_taken_back_and_the_token_is_not_kept()
    {
        var now = new DateTimeOffset(2026, 5, 3, 12, 0, 0, TimeSpan.Zero);
        var (device, token) = await Store.Devices.AddAsync(" my phone ", now, cancellation: Cancellation);
        Assert.Equal("my phone", device.Name);
        // 256 bits in base 64 without padding (RFC 4648): 43 characters.
        Assert.Equal(43, token.Length);
        Assert.Equal(device.Id, (await Store.Devices.FindAsync(token, now, Cancellation))?.Id);
        Assert.Null(await Store.Devices.FindAsync(token[..^1] + (token[^1] == 'A' ? 'B' : 'A'), now, Cancellation));
        Assert.Equal(now.AddHours(1), (await MetAsync(now.AddHours(1))).LastMet);
        Assert.True(await Store.Devices.RevokeAsync(device.Id, now, Cancellation));
        Assert.Null(await Store.Devices.FindAsync(token, now, Cancellation));
        Assert.True(Assert.Single(await Store.Devices.AllAsync(Cancellation)).Revoked);
        Assert.False(await Store.Devices.RevokeAsync(999, now, Cancellation));

        async Task<PairedDevice> MetAsync(DateTimeOffset at)
        {
            await Store.Devices.FindAsync(token, at, Cancellation);
            return Assert.Single(await Store.Devices.AllAsync(Cancellation));
        }
    }
}
