using Foramen.Field.Storage;
using Foramen.Field.Tests.TestKit;
using Foramen.Journal.Bodies;

namespace Foramen.Field.Tests.Storage;

public sealed class JournalSessionTests
{
    [Fact]
    public async Task Nothing_enters_the_ledger_that_the_store_refused()
    {
        using var field = new FieldContext();
        await field.Session.OpenAsync();
        field.Store.Refuse = StoreRefusal.Full;
        var refused = await Assert.ThrowsAsync<StoreRefusedException>(() => field.Session.AppendAsync(Outing(field)));
        Assert.Equal(StoreRefusal.Full, refused.Refusal);
        Assert.Equal(0, field.Session.Ledger.Outings.Count);
        field.Store.Refuse = null;
        await field.Session.AppendAsync(Outing(field));
        Assert.Equal(1, field.Session.Ledger.Outings.Count);
    }

    [Fact]
    public void Where_nothing_better_is_known_the_refusal_says_what_the_browser_said()
    {
        Assert.Contains("(DataError: no key)", new StoreRefusedException(StoreRefusal.Failed, "DataError: no key").Message, StringComparison.Ordinal);
        Assert.DoesNotContain("QuotaExceededError", new StoreRefusedException(StoreRefusal.Full, "QuotaExceededError: x").Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_tabs_never_use_a_number_twice()
    {
        var store = new MemoryStore();
        using var one = new FieldContext(store);
        using var other = new FieldContext(store);
        await one.Session.OpenAsync();
        await other.Session.OpenAsync();
        for (var i = 0; i < 10; i++)
        {
            await (i % 3 == 0 ? one : other).Session.AppendAsync(Outing(one), Outing(one));
        }

        store.TellOtherTabs();
        Assert.Equal(20, store.Sequence);
        Assert.Empty(one.Session.Ledger.Entries.Conflicts);
        Assert.Equal(20, one.Session.Ledger.Outings.Count);
        Assert.Equal(20, other.Session.Ledger.Outings.Count);
        Assert.Equal(one.Session.Device, other.Session.Device);
    }

    [Fact]
    public async Task A_damaged_line_is_named_and_the_rest_is_read()
    {
        var store = new MemoryStore();
        using (var field = new FieldContext(store))
        {
            await field.Session.AppendAsync(Outing(field));
        }

        store.AddRaw("{\"half\":");
        using var again = new FieldContext(store);
        await again.Session.OpenAsync();
        Assert.Equal(1, again.Session.Ledger.Outings.Count);
        Assert.Single(again.Session.Unreadable);
        await again.Session.AppendAsync(Outing(again));
        Assert.Equal(2, again.Session.Ledger.Outings.Count);
    }

    // So many lines are read on trust at first; what does not fit its hash is out of the ledger before the check ends.
    [Fact]
    public async Task A_changed_entry_among_many_is_found_after_the_start()
    {
        var store = new MemoryStore();
        using (var field = new FieldContext(store))
        {
            await field.Session.AppendAsync([.. Enumerable.Range(0, 600).Select(_ => Outing(field))]);
        }

        var honest = store.Lines[300].Line;
        store.Change(300, honest.Replace("\"name\":\"", "\"name\":\"Not ", StringComparison.Ordinal));
        Assert.NotEqual(honest, store.Lines[300].Line);
        using var again = new FieldContext(store);
        await again.Session.OpenAsync();
        await again.Session.Checked;
        Assert.Equal(599, again.Session.Ledger.Outings.Count);
        Assert.Single(again.Session.Unreadable);
        await again.Session.AppendAsync(Outing(again));
        Assert.Equal(600, again.Session.Ledger.Outings.Count);
    }

    [Fact]
    public async Task An_import_taken_twice_changes_nothing_the_second_time()
    {
        using var field = new FieldContext();
        using var other = new FieldContext();
        await other.Session.AppendAsync(Outing(other), Outing(other));
        var entries = other.Session.Ledger.Entries.All.ToList();
        Assert.Equal(2, await field.Session.TakeInAsync(entries));
        Assert.Equal(0, await field.Session.TakeInAsync(entries));
        Assert.Equal(2, field.Store.Lines.Count);
        await field.Session.AppendAsync(Outing(field));
        Assert.Equal(1, field.Store.Sequence);
    }

    [Fact]
    public async Task A_browser_that_keeps_nothing_is_said_and_can_be_tried_again()
    {
        var store = new MemoryStore { Refuse = StoreRefusal.Unavailable };
        using var field = new FieldContext(store);
        await field.Session.OpenAsync();
        Assert.False(field.Session.IsOpen);
        Assert.Contains("private window", field.Session.Refused!.Message, StringComparison.Ordinal);
        store.Refuse = null;
        await field.Session.ReopenAsync();
        Assert.True(field.Session.IsOpen);
    }

    private static OutingStarted Outing(FieldContext field) => new() { Outing = field.Session.NewId(), Name = "Canal basin" };
}
