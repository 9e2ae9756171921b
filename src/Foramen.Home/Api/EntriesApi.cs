using System.Globalization;
using Foramen.Home.Access;
using Foramen.Home.Operations;
using Foramen.Home.Refusals;
using Foramen.Journal.Sync;
using Foramen.Storage;

namespace Foramen.Home.Api;

/// <summary>The journal, both ways.</summary>
internal static class EntriesApi
{
    public static void MapTo(IEndpointRouteBuilder routes, JournalStore store, HomeMetrics metrics)
    {
        routes.MapPost("/api/entries", (HttpContext context) => Refusal.GuardAsync(context, () => PushAsync(context, store, metrics)));
        routes.MapGet("/api/entries", (HttpContext context) => Refusal.GuardAsync(context, () => PullAsync(context, store, metrics)));
    }

    private static async Task PushAsync(HttpContext context, JournalStore store, HomeMetrics metrics)
    {
        var (_, lines) = SyncBatch.Read(await Body.ReadAsync(context, SyncBatch.MaxBytes, SyncBatch.MediaType));
        var received = lines.Select(line => new ReceivedEntry(line.Entry, line.Line)).ToList();
        var device = Caller.Of(context).Device;
        if (device is { WorkshopId: not null } && await store.Workshops.RefusedAsync(device, received, context.RequestAborted) is { } refused)
        {
            throw new BadBatchException($"Entry {refused + 1} of the batch is about a sheet or an entry of somebody else.", refused);
        }

        // Once a batch is whole here it is committed, even if the device has hung up: its next try finds it known.
        var appended = await store.AppendAsync(received, device?.Id, CancellationToken.None);
        metrics.Appended(appended);
        if (device is { WorkshopId: not null })
        {
            device = await store.Workshops.OwnAsync(device, received, CancellationToken.None);
        }

        var answer = new PushAnswer(store.EpochFor(device), appended.Taken, appended.Known, appended.Before.ToString(), appended.After.ToString());
        context.Response.ContentType = "application/json";
        await context.Response.WriteAsync(answer.ToJson(), context.RequestAborted);
    }

    private static async Task PullAsync(HttpContext context, JournalStore store, HomeMetrics metrics)
    {
        var query = context.Request.Query;
        // A phone asks for small pages.
        var most = int.TryParse(query["most"], NumberStyles.None, CultureInfo.InvariantCulture, out var asked) && asked > 0
            ? ReadLimits.Usual with { Entries = Math.Min(asked, ReadLimits.Usual.Entries) }
            : ReadLimits.Usual;
        var device = Caller.Of(context).Device;
        var page = await store.ReadAsync(query["epoch"], query["after"], most, device, context.RequestAborted);
        metrics.Given(page.Lines.Count);
        var batch = SyncBatch.Write(
            new SyncHead { ForamenSync = SyncBatch.Version, Entries = 0, Epoch = store.EpochFor(device), From = page.From.ToString(), Next = page.Next.ToString(), More = page.More },
            page.Lines);
        context.Response.ContentType = SyncBatch.MediaType;
        context.Response.ContentLength = batch.Length;
        await context.Response.Body.WriteAsync(batch, context.RequestAborted);
    }
}
