using Foramen.Journal.Entries;
using Foramen.Journal.Sync;

namespace Foramen.Journal.Tests.Sync;

/// <summary>Home as a list in memory: the protocol and nothing else. Small pages, so that meetings have many steps.</summary>
internal sealed class ModelHome(int page)
{
    private readonly List<(BatchLine Line, int Mark)> arrived = [];
    private int marks;
    private int stores = 1;

    public string Epoch => $"store-{stores}";

    public IEnumerable<Entry> Entries => arrived.Select(one => one.Line.Entry);

    public PushAnswer Push(byte[] batch)
    {
        var (_, lines) = SyncBatch.Read(batch);
        var (count, before) = (arrived.Count, CursorAt(arrived.Count));
        marks++;
        foreach (var line in lines)
        {
            if (!arrived.Exists(known => known.Line.Entry.Equals(line.Entry)))
            {
                arrived.Add((line, marks));
            }
        }

        return new PushAnswer(Epoch, arrived.Count - count, lines.Count - (arrived.Count - count), before, CursorAt(arrived.Count));
    }

    public byte[] Pull(string epoch, string cursor)
    {
        // A number alone would mislead: after going back, other entries take the old numbers.
        var from = epoch == Epoch ? Math.Max(0, Enumerable.Range(0, arrived.Count + 1).ToList().FindIndex(at => CursorAt(at) == cursor)) : 0;
        var lines = arrived.Skip(from).Take(page).Select(one => one.Line.Line).ToList();
        var next = from + lines.Count;
        return SyncBatch.Write(new SyncHead { ForamenSync = 1, Entries = 0, Epoch = Epoch, From = CursorAt(from), Next = CursorAt(next), More = next < arrived.Count }, lines);
    }

    /// <summary>Put back to an earlier day: by the restore command, which makes a new store, or by copying the file behind its back.</summary>
    public void GoBack(int keep, bool byCopying)
    {
        arrived.RemoveRange(Math.Min(keep, arrived.Count), Math.Max(0, arrived.Count - keep));
        stores += byCopying ? 0 : 1;
    }

    private string CursorAt(int count) => count == 0 ? "" : $"{count}.{arrived[count - 1].Mark}";
}
