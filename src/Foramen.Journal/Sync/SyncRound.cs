namespace Foramen.Journal.Sync;

/// <summary>
/// One meeting of a device with Home: first what is new there, then what is new here. The receiver keeps first and the mark moves after, so a stop at any
/// point repeats work and skips none.
/// </summary>
public static class SyncRound
{
    /// <summary>Entries of one batch that is sent: small enough for a bad connection.</summary>
    public const int UsualBatch = 200;

    private const int UsualBatchBytes = 512 * 1024;
    private const int MaxRestarts = 3;

    /// <summary>Meets Home until both hold the same, or something fails.</summary>
    /// <param name="device">This device.</param>
    /// <param name="home">Home.</param>
    /// <param name="batchEntries">Most entries of one batch that is sent.</param>
    /// <param name="cancellation">Stops between batches.</param>
    /// <exception cref="HomeRefusedException">It ended early; what was acknowledged until then stays.</exception>
    public static async Task<SyncReport> RunAsync(ISyncDevice device, ISyncHome home, int batchEntries = UsualBatch, CancellationToken cancellation = default)
    {
        var report = new SyncReport(0, 0, 0);
        for (var restart = 0; restart < MaxRestarts; restart++)
        {
            report = await PullAsync(device, home, report, cancellation);
            (report, var done) = await PushAsync(device, home, batchEntries, report, cancellation);
            if (done)
            {
                return report;
            }
        }

        throw ReplacedAgain();
    }

    private static async Task<SyncReport> PullAsync(ISyncDevice device, ISyncHome home, SyncReport report, CancellationToken cancellation)
    {
        var beginnings = 0;
        for (var more = true; more;)
        {
            var mark = device.Mark;
            var (head, lines) = Read(await home.PullAsync(mark.Epoch, mark.Cursor, cancellation));
            if (head is not { Epoch: { Length: > 0 } epoch, From: { } from, Next: { } next, More: { } rest } || (rest && (lines.Count == 0 || next == from)))
            {
                throw new HomeRefusedException(HomeRefusal.Failed, "Home's answer is not one of this app's protocol.");
            }

            if (epoch != mark.Epoch || from != mark.Cursor)
            {
                // Another store under this address, or one that was put back to an earlier day: everything is compared anew.
                if (from.Length > 0)
                {
                    throw new HomeRefusedException(HomeRefusal.Failed, "Home's answer does not begin where this device asked.");
                }

                // Several stores behind one address would send the same pages for ever.
                if (++beginnings > MaxRestarts)
                {
                    throw ReplacedAgain();
                }

                mark = new SyncMark(epoch, "", 0, epoch == mark.Epoch ? mark.Generation + 1 : 0);
                await device.SaveMarkAsync(mark);
            }

            if (lines.Count > 0)
            {
                await device.TakeInAsync(lines, mark.Origin);
            }

            if (next != mark.Cursor)
            {
                await device.SaveMarkAsync(mark with { Cursor = next });
            }

            report = report with { Received = report.Received + lines.Count };
            more = rest;
        }

        return report;
    }

    private static async Task<(SyncReport Report, bool Done)> PushAsync(
        ISyncDevice device, ISyncHome home, int batchEntries, SyncReport report, CancellationToken cancellation)
    {
        while (true)
        {
            var mark = device.Mark;
            var unsent = Cut(await device.UnsentAsync(mark.Origin, mark.SentThrough, batchEntries));
            if (unsent.Count == 0)
            {
                return (report, true);
            }

            var lines = unsent.Select(one => one.Line).ToList();
            PushAnswer? answer = null;
            while (answer is null && lines.Count > 0)
            {
                try
                {
                    answer = await home.PushAsync(SyncBatch.Write(lines), cancellation);
                }
                catch (HomeRefusedException e) when (e is { Why: HomeRefusal.BadEntry, Line: { } bad } && bad >= 0 && bad < lines.Count)
                {
                    // One entry that Home cannot read must not keep the others away from it.
                    lines.RemoveAt(bad);
                }
            }

            if (answer is not null && answer.Epoch != mark.Epoch)
            {
                // The next pull begins anew with that store; all is sent again, so what could not be sent shows again.
                return (report with { Unsendable = 0 }, false);
            }

            // Where nothing else arrived in between, Home need not send these back.
            var cursor = answer is not null && answer.Before == mark.Cursor ? answer.After : mark.Cursor;
            await device.SaveMarkAsync(mark with { SentThrough = unsent[^1].Position, Cursor = cursor });
            report = report with { Sent = report.Sent + lines.Count, Unsendable = report.Unsendable + unsent.Count - lines.Count };
        }
    }

    private static List<UnsentEntry> Cut(IReadOnlyList<UnsentEntry> unsent)
    {
        var taken = new List<UnsentEntry>();
        var bytes = 0;
        foreach (var one in unsent)
        {
            bytes += one.Line.Length;
            if (taken.Count > 0 && bytes > UsualBatchBytes)
            {
                break;
            }

            taken.Add(one);
        }

        return taken;
    }

    private static HomeRefusedException ReplacedAgain()
        => new(HomeRefusal.Failed, "Home's store was replaced again and again while this device talked to it.");

    private static (SyncHead Head, IReadOnlyList<BatchLine> Lines) Read(byte[] batch)
    {
        try
        {
            return SyncBatch.Read(batch);
        }
        catch (BadBatchException e)
        {
            throw new HomeRefusedException(HomeRefusal.CutShort, e.Message, cause: e);
        }
    }
}
