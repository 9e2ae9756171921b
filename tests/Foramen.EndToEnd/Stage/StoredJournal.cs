using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;
using Microsoft.Playwright;

namespace Foramen.EndToEnd.Stage;

/// <summary>What lies in the browser's own database, read past the app.</summary>
internal static class StoredJournal
{
    private const string Lines =
        """
        () => new Promise((resolve, reject) => {
          const opening = indexedDB.open('foramen');
          opening.onerror = () => reject(opening.error);
          opening.onsuccess = () => {
            const request = opening.result.transaction('entries').objectStore('entries').getAll();
            request.onerror = () => reject(request.error);
            request.onsuccess = () => { opening.result.close(); resolve(request.result.map(stored => stored.line)); };
          };
        })
        """;

    public static async Task<IReadOnlyList<Entry>> ReadAsync(IPage page)
        => [.. (await page.EvaluateAsync<string[]>(Lines)).Select(line => EntryLine.Read(line))];

    /// <summary>The bodies of one type, in the order they were stored.</summary>
    public static async Task<IReadOnlyList<(DateTimeOffset At, TBody Body)>> AllAsync<TBody>(IPage page)
        where TBody : EntryBody
        => [.. (await ReadAsync(page)).Where(entry => entry.ReadBody().Body is TBody).Select(entry => (entry.At, (TBody)entry.ReadBody().Body!))];
}
