using System.Text;
using Foramen.Journal.Entries;
using Foramen.Journal.Exchange;

namespace Foramen.Storage;

/// <summary>An entry that was read and checked, with the line it came in.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Line">Its line in UTF-8, without its end; kept and passed on as it is.</param>
public sealed record ReceivedEntry(Entry Entry, byte[] Line)
{
    /// <summary>An entry in the line that this version writes.</summary>
    public static ReceivedEntry Of(Entry entry) => new(entry, Encoding.UTF8.GetBytes(EntryLine.Write(entry)));
}
