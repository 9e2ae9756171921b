using System.Text;
using Foramen.Engine.Quantities;
using Foramen.Field.Device;
using Foramen.Journal.Bodies;
using Foramen.Journal.Exchange;

namespace Foramen.Field.Storage;

/// <summary>Takes in the demo outing that the host offers, but only into a journal in which nothing has happened yet.</summary>
internal static class DemoOuting
{
    /// <summary>Opens the journal and takes the demo in, its photographs first, so that no page looks for them too early.</summary>
    /// <returns>How many entries were taken in.</returns>
    public static async Task<int> TakeInAsync(JournalSession session, IPlatform platform, IPictures pictures)
    {
        await session.OpenAsync();
        if (!session.IsOpen || session.Ledger.Entries.Count > 0)
        {
            return 0;
        }

        var lines = await platform.DemoOutingAsync();
        try
        {
            if (lines.Length == 0)
            {
                return 0;
            }

            var entries = JournalFile.Read(Encoding.UTF8.GetBytes(lines)).Entries;
            foreach (var photograph in entries.Select(entry => entry.ReadBody().Body).OfType<PhotographAdded>())
            {
                await pictures.FetchAsync($"demo/photographs/{photograph.ContentHash}", photograph.ContentHash, photograph.MediaType);
            }

            var taken = await session.TakeInAsync([.. entries]);
            session.BeginAnew();
            return taken;
        }
        catch (Exception e) when (e is RefusalException or StoreRefusedException)
        {
            // A demo that cannot be taken in is no loss; the pages say themselves where the store refuses.
            return 0;
        }
    }
}
