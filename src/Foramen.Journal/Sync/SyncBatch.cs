using System.Buffers;
using System.Text.Json;
using Foramen.Engine.Quantities;
using Foramen.Journal.Exchange;

namespace Foramen.Journal.Sync;

/// <summary>
/// A batch of entries on the wire: a head and as many entry lines as it says, each ended by a line break. A batch that was cut anywhere is told by that
/// count, whatever carried it. All or nothing.
/// </summary>
public static class SyncBatch
{
    /// <summary>The version this code writes.</summary>
    public const int Version = 1;

    /// <summary>Most entries of a batch that is accepted.</summary>
    public const int MaxEntries = 5_000;

    /// <summary>Largest batch that is accepted, bytes.</summary>
    public const int MaxBytes = 8 * 1_048_576;

    /// <summary>The media type of JSON lines.</summary>
    public const string MediaType = JournalFile.MediaType;

    /// <summary>A batch as bytes.</summary>
    /// <param name="head">Its head; the count is set here.</param>
    /// <param name="lines">The entry lines, without their ends.</param>
    public static byte[] Write(SyncHead head, IReadOnlyList<byte[]> lines)
    {
        var buffer = new ArrayBufferWriter<byte>(256 + lines.Sum(line => line.Length + 1));
        buffer.Write(JsonSerializer.SerializeToUtf8Bytes(head with { Entries = lines.Count }, SyncJson.Default.SyncHead));
        buffer.Write("\n"u8);
        foreach (var line in lines)
        {
            buffer.Write(line);
            buffer.Write("\n"u8);
        }

        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>A device's batch.</summary>
    public static byte[] Write(IReadOnlyList<byte[]> lines) => Write(new SyncHead { ForamenSync = Version, Entries = 0 }, lines);

    /// <summary>Reads a batch.</summary>
    /// <param name="batch">Any bytes.</param>
    /// <exception cref="BadBatchException">It is cut, damaged, forged or too large.</exception>
    public static (SyncHead Head, IReadOnlyList<BatchLine> Lines) Read(ReadOnlySpan<byte> batch)
    {
        if (batch.Length > MaxBytes)
        {
            throw new BadBatchException($"The batch has {batch.Length} bytes; at most {MaxBytes} are taken.");
        }

        var rest = batch;
        var head = ReadHead(Next(ref rest));
        var lines = new List<BatchLine>(Math.Min(head.Entries, batch.Length / 200));
        while (!rest.IsEmpty)
        {
            if (lines.Count == head.Entries)
            {
                throw new BadBatchException($"The batch says it has {head.Entries} entries, but more follow.");
            }

            var line = Next(ref rest);
            try
            {
                lines.Add(new BatchLine(EntryLine.Read(line), line.ToArray()));
            }
            catch (RefusalException e)
            {
                throw new BadBatchException($"Entry {lines.Count + 1} of the batch: {e.Message}", lines.Count, e);
            }
        }

        return lines.Count == head.Entries
            ? (head, lines)
            : throw CutShort();
    }

    private static ReadOnlySpan<byte> Next(ref ReadOnlySpan<byte> rest)
    {
        var end = rest.IndexOf((byte)'\n');
        if (end < 0)
        {
            throw CutShort();
        }

        var line = rest[..end];
        rest = rest[(end + 1)..];
        return line.Length <= ImportLimits.Usual.MaxLineBytes
            ? line
            : throw new BadBatchException($"A line of the batch has {line.Length} bytes; at most {ImportLimits.Usual.MaxLineBytes} are taken.");
    }

    private static SyncHead ReadHead(ReadOnlySpan<byte> line)
    {
        try
        {
            var head = JsonSerializer.Deserialize(line, SyncJson.Default.SyncHead);
            return head is { ForamenSync: Version, Entries: >= 0 and <= MaxEntries }
                ? head
                : throw new BadBatchException($"The batch should begin with {{\"foramenSync\":{Version},\"entries\":…}} and have at most {MaxEntries} entries.");
        }
        catch (JsonException e)
        {
            throw new BadBatchException($"The batch should begin with {{\"foramenSync\":{Version},\"entries\":…}}.", cause: e);
        }
    }

    private static BadBatchException CutShort() => new("The batch was cut short; send it again.");
}
