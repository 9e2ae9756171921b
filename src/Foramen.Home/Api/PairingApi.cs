using Foramen.Engine.Quantities;
using Foramen.Home.Access;
using Foramen.Home.Operations;
using Foramen.Home.Refusals;
using Foramen.Storage;

namespace Foramen.Home.Api;

/// <summary>Pairing devices, listing them, taking their tokens back. Codes are made and devices removed at home only.</summary>
internal static class PairingApi
{
    private const int MaxRequestBytes = 2_000;

    public static void MapTo(IEndpointRouteBuilder routes, JournalStore store, PairingCodes codes, HomeOptions options, TimeProvider time)
    {
        routes.MapPost("/api/codes", (HttpContext context) => Refusal.GuardAsync(context, () => OwnerOnly(context, () => CodeAsync(context, codes, options))));
        routes.MapPost("/api/pair", (HttpContext context) => Refusal.GuardAsync(context, () => PairAsync(context, store, codes, time)));
        routes.MapGet("/api/devices", (HttpContext context) => Refusal.GuardAsync(context, () => OwnerOnly(context, () => ListAsync(context, store))));
        routes.MapDelete("/api/devices/{id:int}", (HttpContext context, int id) => Refusal.GuardAsync(context, () => RevokeAsync(context, store, id, time)));
    }

    private static Task OwnerOnly(HttpContext context, Func<Task> work) => Caller.Of(context).IsOwner
        ? work()
        : Refusal.WriteAsync(context, StatusCodes.Status403Forbidden, "failed", "Only the machine that Home runs on may do this; open Home there.");

    private static async Task CodeAsync(HttpContext context, PairingCodes codes, HomeOptions options)
    {
        var (code, until) = codes.Open();
        await context.Response.WriteAsJsonAsync(QrCode.Of(context, options, "settings", "pair", code, until), HomeJson.Default.CodeBody, cancellationToken: context.RequestAborted);
    }

    private static async Task PairAsync(HttpContext context, JournalStore store, PairingCodes codes, TimeProvider time)
    {
        var asked = await Body.ReadJsonAsync(context, MaxRequestBytes, HomeJson.Default.PairRequest);
        var name = asked.Name?.Trim() ?? "";
        if (name.Length is 0 or > DeviceRegister.MaxNameLength)
        {
            // Before the code is used up.
            throw new RefusalException($"Give the device a name of 1 to {DeviceRegister.MaxNameLength} characters.");
        }

        switch (codes.Use(asked.Code ?? "", out var workshop))
        {
            case CodeAnswer.TooOften:
                await Refusal.WriteAsync(context, StatusCodes.Status429TooManyRequests, "busy", "Too many codes were tried; wait a minute.");
                return;
            case CodeAnswer.Wrong:
                await Refusal.WriteAsync(context, StatusCodes.Status403Forbidden, "notPaired", "This code is not good, or not any more; make a new one at home.");
                return;
        }

        var (device, token) = await store.Devices.AddAsync(name, time.GetUtcNow(), workshop, context.RequestAborted);
        var joined = workshop is { } id ? await store.Workshops.FindAsync(id, context.RequestAborted) : null;
        await context.Response.WriteAsJsonAsync(new PairBody(token, device.Id, device.Name, joined?.Name), HomeJson.Default.PairBody, cancellationToken: context.RequestAborted);
    }

    private static async Task ListAsync(HttpContext context, JournalStore store)
    {
        var devices = await store.Devices.AllAsync(context.RequestAborted);
        await context.Response.WriteAsJsonAsync(
            (IReadOnlyList<DeviceBody>)[.. devices.Where(one => one.WorkshopId is null).Select(DeviceBody.Of)],
            HomeJson.Default.IReadOnlyListDeviceBody, cancellationToken: context.RequestAborted);
    }

    // A device may leave by itself; a leader may send a member away; only at home may a device of the household be sent away.
    private static async Task RevokeAsync(HttpContext context, JournalStore store, int id, TimeProvider time)
    {
        var caller = Caller.Of(context);
        if (caller.Device is { } self && self.Id != id && !(caller.Leads && await store.Devices.IsMemberAsync(id, context.RequestAborted)))
        {
            await Refusal.WriteAsync(context, StatusCodes.Status403Forbidden, "failed", "A device may only remove itself.");
            return;
        }

        context.Response.StatusCode = await store.Devices.RevokeAsync(id, time.GetUtcNow(), context.RequestAborted) ? StatusCodes.Status204NoContent : StatusCodes.Status404NotFound;
    }
}
