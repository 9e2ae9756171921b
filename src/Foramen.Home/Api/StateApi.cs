using Foramen.Home.Access;
using Foramen.Home.Operations;
using Foramen.Home.Refusals;
using Foramen.Storage;

namespace Foramen.Home.Api;

/// <summary>What Home is, for Field; and whether it is well, for whoever watches over it.</summary>
internal static class StateApi
{
    public static void MapTo(IEndpointRouteBuilder routes, JournalStore? store, HomeOptions options)
    {
        routes.MapGet("/api/home", (HttpContext context) => Refusal.GuardAsync(context, () => HomeAsync(context, store, options)));
        routes.MapGet("/health", (HttpContext context) => HealthAsync(context, store));
    }

    private static async Task HomeAsync(HttpContext context, JournalStore? store, HomeOptions options)
    {
        var device = CallerOf(context)?.Device;
        var workshop = device?.WorkshopId is { } id && store is not null ? await store.Workshops.FindAsync(id, context.RequestAborted) : null;
        await context.Response.WriteAsJsonAsync(
            new HomeBody(1, AccessOf(context, store), options.ServesOthers, device?.Name, workshop?.Name), HomeJson.Default.HomeBody, cancellationToken: context.RequestAborted);
    }

    private static Caller? CallerOf(HttpContext context) => context.Items.TryGetValue(typeof(Caller), out var caller) ? (Caller?)caller : null;

    private static string AccessOf(HttpContext context, JournalStore? store)
        => store is null ? "none" : CallerOf(context) is not { } caller ? "needed" : caller.IsOwner ? "own" : "paired";

    private static async Task HealthAsync(HttpContext context, JournalStore? store)
    {
        var body = new HealthBody("ok");
        if (store is not null)
        {
            try
            {
                using var limit = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted);
                limit.CancelAfter(TimeSpan.FromSeconds(5));
                var condition = await store.ConditionAsync(limit.Token);
                // What it runs on is nobody's business but the owner's.
                body = CallerOf(context) is { IsOwner: true } ? new HealthBody("ok", condition.Database, condition.Durability, condition.Entries) : body;
            }
            catch (Exception e) when (e is StoreException or OperationCanceledException)
            {
                body = new HealthBody("the database is away");
                context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
            }
        }

        await context.Response.WriteAsJsonAsync(body, HomeJson.Default.HealthBody, cancellationToken: CancellationToken.None);
    }
}
