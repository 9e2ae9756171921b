using Foramen.Home.Access;
using Foramen.Home.Operations;
using Foramen.Home.Refusals;
using Foramen.Storage;

namespace Foramen.Home.Api;

/// <summary>Workshops: opened, shown as a square to join by, and ended by a leader, which is this machine's own user or a device of the household.</summary>
internal static class WorkshopsApi
{
    private const int MaxRequestBytes = 2_000;

    public static void MapTo(IEndpointRouteBuilder routes, JournalStore store, PairingCodes codes, HomeOptions options, TimeProvider time)
    {
        routes.MapGet("/api/workshops", (HttpContext context) => Refusal.GuardAsync(context, () => LeaderOnly(context, () => ListAsync(context, store))));
        routes.MapPost("/api/workshops", (HttpContext context) => Refusal.GuardAsync(context, () => LeaderOnly(context, () => OpenAsync(context, store, time))));
        routes.MapPost("/api/workshops/{id:int}/code", (HttpContext context, int id) => Refusal.GuardAsync(context, () => LeaderOnly(context, () => CodeAsync(context, store, codes, options, id))));
        routes.MapDelete("/api/workshops/{id:int}", (HttpContext context, int id) => Refusal.GuardAsync(context, () => LeaderOnly(context, () => EndAsync(context, store, codes, id, time))));
    }

    private static Task LeaderOnly(HttpContext context, Func<Task> work) => Caller.Of(context).Leads
        ? work()
        : Refusal.WriteAsync(context, StatusCodes.Status403Forbidden, "failed", "Only the workshop's leader may do this.");

    private static async Task ListAsync(HttpContext context, JournalStore store)
    {
        var devices = await store.Devices.AllAsync(context.RequestAborted);
        var workshops = await store.Workshops.AllAsync(context.RequestAborted);
        await context.Response.WriteAsJsonAsync(
            (IReadOnlyList<WorkshopBody>)[.. workshops.Select(one => Body(one, devices))], HomeJson.Default.IReadOnlyListWorkshopBody, cancellationToken: context.RequestAborted);
    }

    private static async Task OpenAsync(HttpContext context, JournalStore store, TimeProvider time)
    {
        var asked = await Api.Body.ReadJsonAsync(context, MaxRequestBytes, HomeJson.Default.WorkshopRequest);
        var opened = await store.Workshops.OpenAsync(asked.Name ?? "", time.GetUtcNow(), context.RequestAborted);
        await context.Response.WriteAsJsonAsync(Body(opened, []), HomeJson.Default.WorkshopBody, cancellationToken: context.RequestAborted);
    }

    private static async Task CodeAsync(HttpContext context, JournalStore store, PairingCodes codes, HomeOptions options, int id)
    {
        if (await store.Workshops.FindAsync(id, context.RequestAborted) is not { Ended: false })
        {
            await Refusal.WriteAsync(context, StatusCodes.Status404NotFound, "failed", "There is no such workshop, or it has ended.");
            return;
        }

        var (code, until) = codes.OpenFor(id);
        await context.Response.WriteAsJsonAsync(QrCode.Of(context, options, "workshop", "join", code, until), HomeJson.Default.CodeBody, cancellationToken: context.RequestAborted);
    }

    private static async Task EndAsync(HttpContext context, JournalStore store, PairingCodes codes, int id, TimeProvider time)
    {
        codes.Close(id);
        context.Response.StatusCode = await store.Workshops.EndAsync(id, time.GetUtcNow(), context.RequestAborted) ? StatusCodes.Status204NoContent : StatusCodes.Status404NotFound;
    }

    private static WorkshopBody Body(Workshop workshop, IReadOnlyList<PairedDevice> devices)
        => new(workshop.Id, workshop.Name, workshop.OpenedAt, workshop.Ended, [.. devices.Where(one => one.WorkshopId == workshop.Id).Select(DeviceBody.Of)]);
}
