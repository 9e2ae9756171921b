using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Sync;
using Foramen.Storage.Model;
using Microsoft.EntityFrameworkCore;

namespace Foramen.Storage;

/// <summary>
/// Workshops and what their members may write. Who brought an entry is known from the device's token, not from what the entry says of itself, so it cannot
/// be forged.
/// </summary>
public sealed class WorkshopRegister
{
    private readonly Func<HomeContext> newContext;
    private readonly Func<Func<Task<object?>>, Task<object?>> guarded;

    internal WorkshopRegister(Func<HomeContext> newContext, Func<Func<Task<object?>>, Task<object?>> guarded) => (this.newContext, this.guarded) = (newContext, guarded);

    /// <summary>Opens a workshop.</summary>
    /// <exception cref="RefusalException">The name is empty or too long.</exception>
    public async Task<Workshop> OpenAsync(string name, DateTimeOffset now, CancellationToken cancellation = default)
    {
        name = name.Trim();
        if (name.Length is 0 or > DeviceRegister.MaxNameLength || name.Any(char.IsControl))
        {
            throw new RefusalException($"A workshop has a name of 1 to {DeviceRegister.MaxNameLength} characters on one line.");
        }

        return (Workshop)(await guarded(async () =>
        {
            await using var context = newContext();
            var stored = new StoredWorkshop { Name = name, OpenedAtUnixMilliseconds = now.ToUnixTimeMilliseconds() };
            context.Workshops.Add(stored);
            await context.SaveChangesAsync(cancellation);
            return Read(stored);
        }))!;
    }

    /// <summary>All workshops, also those that have ended, oldest first.</summary>
    public async Task<IReadOnlyList<Workshop>> AllAsync(CancellationToken cancellation = default) => (IReadOnlyList<Workshop>)(await guarded(async () =>
    {
        await using var context = newContext();
        return (await context.Workshops.AsNoTracking().OrderBy(one => one.Id).ToListAsync(cancellation)).ConvertAll(Read);
    }))!;

    /// <summary>One workshop; null where there is none of this number.</summary>
    public async Task<Workshop?> FindAsync(int id, CancellationToken cancellation = default) => (Workshop?)await guarded(async () =>
    {
        await using var context = newContext();
        return await context.Workshops.AsNoTracking().FirstOrDefaultAsync(one => one.Id == id, cancellation) is { } stored ? Read(stored) : null;
    });

    /// <summary>Ends a workshop: nobody joins any more, and every member's token is taken back.</summary>
    /// <returns>Whether there was such a workshop.</returns>
    public async Task<bool> EndAsync(int id, DateTimeOffset now, CancellationToken cancellation = default) => (bool)(await guarded(async () =>
    {
        await using var context = newContext();
        await using var transaction = await context.Database.BeginTransactionAsync(cancellation);
        var at = now.ToUnixTimeMilliseconds();
        var found = await context.Workshops.Where(one => one.Id == id)
            .ExecuteUpdateAsync(set => set.SetProperty(one => one.EndedAtUnixMilliseconds, one => one.EndedAtUnixMilliseconds ?? at), cancellation) > 0;
        await context.Devices.Where(one => one.WorkshopId == id)
            .ExecuteUpdateAsync(set => set.SetProperty(one => one.RevokedAtUnixMilliseconds, one => one.RevokedAtUnixMilliseconds ?? at), cancellation);
        await transaction.CommitAsync(cancellation);
        return found;
    }))!;

    /// <summary>
    /// Which entry of a member's batch is refused, from 0: one that voids or amends what the member may not see, writes of another's sheet, or begins a sheet
    /// that another began. What Home already holds, byte for byte, is no news and never refused. Null where all may be taken in.
    /// </summary>
    public async Task<int?> RefusedAsync(PairedDevice member, IReadOnlyList<ReceivedEntry> entries, CancellationToken cancellation = default) => (int?)await guarded(async () =>
    {
        await using var context = newContext();
        var ids = entries.Select(one => one.Entry.Id.ToBytes()).ToList();
        var known = (await context.Entries.Where(one => ids.Contains(one.EntryId)).Select(one => one.Hash).ToListAsync(cancellation)).Select(Convert.ToHexStringLower).ToHashSet();
        var topics = entries.Select(one => EntryTopic.Of(one.Entry)?.ToBytes()).ToList();
        var asked = topics.OfType<byte[]>().ToList();
        var hidden = await HexAsync(
            context.Entries.Where(one => asked.Contains(one.EntryId) && !MemberView.Of(context, member).Any(seen => seen.Arrival == one.Arrival)).Select(one => one.EntryId), cancellation);
        var begun = await HexAsync(context.Entries.Where(one => one.Kind == EntryKind.SheetStarted && asked.Contains(one.About!)).Select(one => one.About!), cancellation);
        var own = await HexAsync(context.OwnSheets.Where(one => one.DeviceId == member.Id && asked.Contains(one.Sheet)).Select(one => one.Sheet), cancellation);
        // Who hands in the very entry that began a sheet had it from its photographer or is the photographer.
        own.UnionWith(entries.Select((one, i) => (one.Entry, Topic: topics[i])).Where(one => one.Entry.Kind == EntryKind.SheetStarted && one.Topic is not null && known.Contains(one.Entry.Hash))
            .Select(one => Convert.ToHexStringLower(one.Topic!)));
        for (var i = 0; i < entries.Count; i++)
        {
            if (topics[i] is not { } topic || known.Contains(entries[i].Entry.Hash))
            {
                continue;
            }

            var name = Convert.ToHexStringLower(topic);
            var aboutEntry = entries[i].Entry.Kind is EntryKind.EntryVoided or EntryKind.EntryAmended;
            if (aboutEntry ? hidden.Contains(name) : begun.Contains(name) && !own.Contains(name))
            {
                return (object?)i;
            }
        }

        return null;
    });

    /// <summary>After a member's batch was taken in: the sheets it began are the member's own, with all that is written of them elsewhere.</summary>
    /// <returns>The member as it is now; the view is another where it has grown backwards.</returns>
    public async Task<PairedDevice> OwnAsync(PairedDevice member, IReadOnlyList<ReceivedEntry> entries, CancellationToken cancellation = default) => (PairedDevice)(await guarded(async () =>
    {
        await using var context = newContext();
        var begun = entries.Where(one => one.Entry.Kind == EntryKind.SheetStarted).Select(one => EntryTopic.Of(one.Entry)?.ToBytes()).OfType<byte[]>().ToList();
        if (begun.Count > 0)
        {
            await using var transaction = await context.Database.BeginTransactionAsync(cancellation);
            var own = await HexAsync(context.OwnSheets.Where(one => one.DeviceId == member.Id && begun.Contains(one.Sheet)).Select(one => one.Sheet), cancellation);
            var news = begun.Where(sheet => own.Add(Convert.ToHexStringLower(sheet))).ToList();
            context.OwnSheets.AddRange(news.Select(sheet => new StoredOwnSheet { DeviceId = member.Id, Sheet = sheet }));
            await context.SaveChangesAsync(cancellation);
            // Somebody else had brought its beginning: what was written of it may lie before the member's cursor.
            if (await context.Entries.AnyAsync(one => one.Kind == EntryKind.SheetStarted && news.Contains(one.About!) && one.BroughtBy != member.Id, cancellation))
            {
                await context.Devices.Where(one => one.Id == member.Id).ExecuteUpdateAsync(set => set.SetProperty(one => one.View, one => one.View + 1), cancellation);
            }

            await transaction.CommitAsync(cancellation);
        }

        var view = await context.Devices.Where(one => one.Id == member.Id).Select(one => one.View).FirstAsync(cancellation);
        return member with { View = view };
    }))!;

    private static async Task<HashSet<string>> HexAsync(IQueryable<byte[]> ids, CancellationToken cancellation)
        => (await ids.ToListAsync(cancellation)).Select(Convert.ToHexStringLower).ToHashSet(StringComparer.Ordinal);

    private static Workshop Read(StoredWorkshop stored)
        => new(stored.Id, stored.Name, DateTimeOffset.FromUnixTimeMilliseconds(stored.OpenedAtUnixMilliseconds), stored.EndedAtUnixMilliseconds is not null);
}
