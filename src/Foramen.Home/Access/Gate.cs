using System.Net;
using Foramen.Home.Operations;
using Foramen.Home.Refusals;
using Foramen.Storage;
using Microsoft.Extensions.Primitives;

namespace Foramen.Home.Access;

/// <summary>
/// Who may ask for what. There are no cookies: a device shows its token, and this machine's own user needs none. That right of the own machine is guarded
/// against pages of other sites in its browser: by the name they ask for (a foreign name that leads here) and by where the request comes from.
/// </summary>
internal sealed class Gate(RequestDelegate next, HomeOptions options, TimeProvider time, IServiceProvider services)
{
    private const string Scheme = "Bearer ";

    /// <summary>What anyone may ask: whether this is a Home, to be paired, and whether it is well.</summary>
    private static readonly string[] Open = ["/api/home", "/api/pair", "/health"];

    public async Task InvokeAsync(HttpContext context)
    {
        var ownName = IsOwnName(context.Request.Host.Host);
        if (options.LoopbackOnly && !ownName)
        {
            await Refusal.WriteAsync(context, StatusCodes.Status421MisdirectedRequest, "failed", "This Home serves this machine only; open it as http://127.0.0.1.");
            return;
        }

        var isApi = context.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase);
        if (!isApi && !context.Request.Path.Equals("/health", StringComparison.OrdinalIgnoreCase))
        {
            await next(context);
            return;
        }

        context.Response.Headers.CacheControl = "no-store";
        if (!IsSameSite(context.Request))
        {
            await Refusal.WriteAsync(context, StatusCodes.Status403Forbidden, "failed", "Pages of other sites may not talk to this Home.");
            return;
        }

        var own = ownName && IsFromHere(context);
        var authorization = context.Request.Headers.Authorization;
        if (authorization.Count > 0)
        {
            if (await DeviceOfAsync(authorization, context.RequestAborted) is not { } device)
            {
                await Refusal.WriteAsync(context, StatusCodes.Status401Unauthorized, "notPaired", "This device is not paired with this Home any more; pair it anew.");
                return;
            }

            new Caller(device).Enter(context);
        }
        else if (own)
        {
            new Caller(Device: null).Enter(context);
        }
        else if (!Array.Exists(Open, path => context.Request.Path.Equals(path, StringComparison.OrdinalIgnoreCase)))
        {
            await Refusal.WriteAsync(context, StatusCodes.Status401Unauthorized, "notPaired", "Pair this device with this Home first.");
            return;
        }

        await next(context);
    }

    private static bool IsOwnName(string host) => host is "localhost" or "[::1]" || (IPAddress.TryParse(host, out var address) && IPAddress.IsLoopback(address));

    // A proxy on this machine would make every caller look like its own user; it says so in its headers.
    private static bool IsFromHere(HttpContext context) => context.Connection.RemoteIpAddress is { } address && IPAddress.IsLoopback(address)
        && !context.Request.Headers.ContainsKey("Forwarded") && !context.Request.Headers.ContainsKey("X-Forwarded-For") && !context.Request.Headers.ContainsKey("Via");

    private static bool IsSameSite(HttpRequest request)
    {
        var site = request.Headers["Sec-Fetch-Site"];
        if (site.Count > 0 && site != "same-origin" && site != "none")
        {
            return false;
        }

        var origin = request.Headers.Origin;
        return origin.Count == 0 || origin == $"{request.Scheme}://{request.Host}";
    }

    private async Task<PairedDevice?> DeviceOfAsync(StringValues authorization, CancellationToken cancellation)
        => authorization is [{ Length: < 200 } text] && text.StartsWith(Scheme, StringComparison.Ordinal) && services.GetService<JournalStore>() is { } store
            ? await store.Devices.FindAsync(text[Scheme.Length..], time.GetUtcNow(), cancellation)
            : null;
}
