using System.Net.Sockets;
using Foramen.Engine.Quantities;
using Foramen.Home.Access;
using Foramen.Home.Api;
using Foramen.Home.Operations;
using Foramen.Home.Refusals;
using Foramen.Storage;
using Foramen.Storage.Pictures;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Foramen.Home;

/// <summary>Serves Field's files and keeps the journal; to this machine only, unless told otherwise.</summary>
internal static class HomeHost
{
    private const int RefusedExitCode = 2;

    public static async Task<int> RunAsync(string[] args)
    {
        try
        {
            await using var home = await StartAsync(args);
            Announce($"Foramen Home: {home.Address}", home.App.Services.GetRequiredService<HomeOptions>().JsonLog);
            if (home.FirstCode is { } code)
            {
                Console.WriteLine($"To pair the first device, open {home.Address} on it and type {code} (good for ten minutes).");
            }

            await home.App.WaitForShutdownAsync();
            return 0;
        }
        catch (Exception e) when (e is RefusalException or StoreException or UnauthorizedAccessException)
        {
            await Console.Error.WriteLineAsync(e.Message);
            return RefusedExitCode;
        }
    }

    // Among structured lines this one is structured too; and a code to pair by belongs in no log, so there it is not said.
    private static void Announce(string sentence, bool asJson)
        => Console.WriteLine(asJson ? System.Text.Json.JsonSerializer.Serialize(new AnnouncementBody("Information", "Foramen.Home", sentence), HomeJson.Default.AnnouncementBody) : sentence);

    /// <summary>Opens everything and listens.</summary>
    /// <exception cref="RefusalException">It cannot be started so.</exception>
    /// <exception cref="StoreException">The store cannot be opened.</exception>
    public static async Task<RunningHome> StartAsync(string[] args, TimeProvider? clock = null)
    {
        // Its files lie beside it, wherever it is started from.
        var builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions
        {
            Args = args, ApplicationName = typeof(HomeHost).Assembly.GetName().Name, ContentRootPath = AppContext.BaseDirectory,
        });
        var options = HomeOptions.Read(builder.Configuration);
        var time = clock ?? TimeProvider.System;

        // Field's files lie in their project until they are published; the manifest of the build knows where.
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.UseKestrelHttpsConfiguration();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestHeadersTotalSize = 16 * 1024;
            kestrel.Listen(options.Listen, options.Port, listen =>
            {
                if (options.Certificate is { } certificate)
                {
                    listen.UseHttps(certificate);
                }
            });
        });
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        if (options.JsonLog)
        {
            builder.Logging.ClearProviders().AddJsonConsole();
        }

        var store = options.KeepsJournal ? await JournalStore.OpenAsync(options.Store()) : null;
        try
        {
            builder.Services.AddSingleton(options);
            builder.Services.AddSingleton(time);
            builder.Services.AddSingleton<HomeMetrics>();
            builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(10));
            if (store is not null)
            {
                builder.Services.AddSingleton(store);
            }

            Telemetry.AddTo(builder);
            var app = builder.Build();
            var codes = new PairingCodes(time);
            app.UseMiddleware<SecurityHeaders>();
            app.UseMiddleware<Gate>();
            app.MapStaticAssets();
            new DemoOuting(options.Demo).MapTo(app);
            StateApi.MapTo(app, store, options);
            if (store is not null)
            {
                EntriesApi.MapTo(app, store, app.Services.GetRequiredService<HomeMetrics>());
                PairingApi.MapTo(app, store, codes, options, time);
                WorkshopsApi.MapTo(app, store, codes, options, time);
                PicturesApi.MapTo(app, new PictureStore(Path.Combine(options.Data!, "pictures"), time.GetUtcNow()));
            }

            app.Map("/api/{**rest}", (HttpContext context) => Refusal.WriteAsync(context, StatusCodes.Status404NotFound, "failed", "There is nothing here."));
            app.MapFallbackToFile("index.html");
            await ListenAsync(app, options.Port);
            var address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
            return new RunningHome(app, store, address, !options.ServesOthers || options.JsonLog || store is null ? null : codes.Open().Code, codes);
        }
        catch
        {
            if (store is not null)
            {
                await store.DisposeAsync();
            }

            throw;
        }
    }

    private static async Task ListenAsync(WebApplication app, int port)
    {
        try
        {
            await app.StartAsync();
        }
        catch (Exception e) when ((e is IOException && e.InnerException is AddressInUseException or SocketException) || e is SocketException)
        {
            throw new RefusalException($"Port {port} is in use or not allowed here; choose another with --port, or 0 for any free one.", e);
        }
    }
}
