using System.Net.NetworkInformation;
using System.Net.Sockets;
using Foramen.Engine.Quantities;
using Foramen.Home.Access;
using Foramen.Storage;
using Microsoft.AspNetCore.Http.Extensions;
using QRCoder;

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
        // The code stands behind the number sign, which browsers do not send: it reaches no log on the way.
        var address = $"{options.Address?.ToString() ?? UriHelper.BuildAbsolute(context.Request.Scheme, HostFor(context.Request.Host))}settings#pair={code}";
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(address, QRCodeGenerator.ECCLevel.M);
        using var svg = new SvgQRCode(data);
        await context.Response.WriteAsJsonAsync(new CodeBody(code, until, address, svg.GetGraphic(6)), HomeJson.Default.CodeBody, cancellationToken: context.RequestAborted);
    }

    // Whoever sits at home has opened it by a name that leads nowhere from a phone.
    private static HostString HostFor(HostString asked)
    {
        if (asked.Host is not ("localhost" or "127.0.0.1" or "[::1]"))
        {
            return asked;
        }

        var own = NetworkInterface.GetAllNetworkInterfaces().Where(one => one.OperationalStatus == OperationalStatus.Up && one.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(one => one.GetIPProperties().UnicastAddresses).Select(one => one.Address)
            .FirstOrDefault(address => address.AddressFamily == AddressFamily.InterNetwork);
        return own is null ? asked : asked.Port is { } port ? new HostString(own.ToString(), port) : new HostString(own.ToString());
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

        switch (codes.Use(asked.Code ?? ""))
        {
            case CodeAnswer.TooOften:
                await Refusal.WriteAsync(context, StatusCodes.Status429TooManyRequests, "busy", "Too many codes were tried; wait a minute.");
                return;
            case CodeAnswer.Wrong:
                await Refusal.WriteAsync(context, StatusCodes.Status403Forbidden, "notPaired", "This code is not good, or not any more; make a new one at home.");
                return;
        }

        var (device, token) = await store.Devices.AddAsync(name, time.GetUtcNow(), context.RequestAborted);
        await context.Response.WriteAsJsonAsync(new PairBody(token, device.Id, device.Name), HomeJson.Default.PairBody, cancellationToken: context.RequestAborted);
    }

    private static async Task ListAsync(HttpContext context, JournalStore store)
    {
        var devices = await store.Devices.AllAsync(context.RequestAborted);
        await context.Response.WriteAsJsonAsync(
            (IReadOnlyList<DeviceBody>)[.. devices.Select(one => new DeviceBody(one.Id, one.Name, one.PairedAt, one.LastMet, one.Revoked))],
            HomeJson.Default.IReadOnlyListDeviceBody, cancellationToken: context.RequestAborted);
    }

    // A device may leave by itself; only at home may another be sent away.
    private static async Task RevokeAsync(HttpContext context, JournalStore store, int id, TimeProvider time)
    {
        if (Caller.Of(context).Device is { } self && self.Id != id)
        {
            await Refusal.WriteAsync(context, StatusCodes.Status403Forbidden, "failed", "A device may only remove itself.");
            return;
        }

        context.Response.StatusCode = await store.Devices.RevokeAsync(id, time.GetUtcNow(), context.RequestAborted) ? StatusCodes.Status204NoContent : StatusCodes.Status404NotFound;
    }
}
