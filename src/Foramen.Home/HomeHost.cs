using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Foramen.Home;

/// <summary>Serves Field's files to this machine only, and on request a demo outing for an empty journal.</summary>
internal static class HomeHost
{
    private const int UsualPort = 5270;

    public static async Task<int> RunAsync(string[] args)
    {
        var builder = WebApplication.CreateSlimBuilder(args);
        var port = builder.Configuration.GetValue("port", UsualPort);
        if (port is < 0 or > 65535)
        {
            await Console.Error.WriteLineAsync($"The port is {port}; it should be between 0 (any free one) and 65535.");
            return 2;
        }

        var demo = builder.Configuration["demo"];
        if (demo is not null && !File.Exists(demo))
        {
            await Console.Error.WriteLineAsync($"There is no journal file {demo}; name the demo outing's file, or leave --demo out.");
            return 2;
        }

        // Field's files lie in their project until they are published; the manifest of the build knows where.
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        var app = builder.Build();

        app.UseMiddleware<SecurityHeaders>();
        app.MapStaticAssets();
        new DemoOuting(demo).MapTo(app);
        app.MapFallbackToFile("index.html");

        try
        {
            await app.StartAsync();
        }
        catch (IOException e) when (e.InnerException is AddressInUseException or SocketException)
        {
            await Console.Error.WriteLineAsync($"Port {port} is in use; choose another with --port, or 0 for any free one.");
            return 2;
        }

        var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        Console.WriteLine($"Foramen Home: {address}");
        await app.WaitForShutdownAsync();
        return 0;
    }
}
