using System.Text;
using Foramen.Engine.Quantities;
using Foramen.Field.Device;
using Foramen.Journal.Exchange;

namespace Foramen.Field.Storage;

/// <summary>Takes in the demo outing that the host offers, but only into a journal in which nothing has happened yet.</summary>
internal static class DemoOuting
{
    /// <summary>Opens the journal and takes the demo in.</summary>
    /// <returns>How many entries were taken in.</returns>
    public static async Task<int> TakeInAsync(JournalSession session, IPlatform platform)
    {
        await session.OpenAsync();
        if (!session.IsOpen || session.Ledger.Entries.Count > 0)
        {
            return 0;
        }

        var lines = await platform.DemoOutingAsync();
        try
        {
            return lines.Length == 0 ? 0 : await session.TakeInAsync([.. JournalFile.Read(Encoding.UTF8.GetBytes(lines)).Entries]);
        }
        catch (Exception e) when (e is RefusalException or StoreRefusedException)
        {
            // A demo that cannot be taken in is no loss; the pages say themselves where the store refuses.
            return 0;
        }
    }
}
