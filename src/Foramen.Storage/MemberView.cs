using Foramen.Journal.Bodies;
using Foramen.Journal.Sync;
using Foramen.Storage.Model;

namespace Foramen.Storage;

/// <summary>
/// What a member of a workshop may see: what the member's own device brought; whatever is written of sheets the member began; the shared kinds, from the
/// household and from members of the same workshop; and what voids or amends any of these.
/// </summary>
internal static class MemberView
{
    private static readonly List<string> Shared = [.. SharedKinds.All];

    public static IQueryable<StoredEntry> Of(HomeContext context, PairedDevice member)
    {
        var (me, group) = (member.Id, member.WorkshopId);
        var own = context.OwnSheets.Where(one => one.DeviceId == me);
        var fellows = context.Devices.Where(one => one.WorkshopId == null || one.WorkshopId == group);
        var direct = context.Entries.Where(one => one.BroughtBy == me
            || (Shared.Contains(one.Kind) && (one.BroughtBy == null || fellows.Any(fellow => fellow.Id == one.BroughtBy)))
            || own.Any(mine => mine.Sheet == one.About));
        var amending = context.Entries.Where(one => one.Kind == EntryKind.EntryAmended && direct.Any(target => target.EntryId == one.About));
        // An amendment may itself be voided; nothing else about what is about another has an effect.
        return context.Entries.Where(one => one.BroughtBy == me
            || (Shared.Contains(one.Kind) && (one.BroughtBy == null || fellows.Any(fellow => fellow.Id == one.BroughtBy)))
            || own.Any(mine => mine.Sheet == one.About)
            || ((one.Kind == EntryKind.EntryVoided || one.Kind == EntryKind.EntryAmended) && direct.Any(target => target.EntryId == one.About))
            || (one.Kind == EntryKind.EntryVoided && amending.Any(target => target.EntryId == one.About)));
    }
}
