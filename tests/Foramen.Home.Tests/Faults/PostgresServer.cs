using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace Foramen.Home.Tests.Faults;

/// <summary>
/// A PostgreSQL cluster of our own in a temporary directory, on a free port of this machine, with the settings it ships with. The server refuses to run as
/// root, so root runs it as its own user.
/// </summary>
internal sealed class PostgresServer : IAsyncDisposable
{
    private const string UserOfTheServer = "postgres";

    private readonly string directory;
    private readonly string binaries;
    private int databases;
    private bool stopped;

    private PostgresServer(string directory, string binaries, int port) => (this.directory, this.binaries, Port) = (directory, binaries, port);

    public int Port { get; }

    public static async Task<PostgresServer> StartAsync()
    {
        var binaries = new[] { "/usr/lib/postgresql" }.Where(Directory.Exists).SelectMany(Directory.GetDirectories)
            .OrderByDescending(version => int.TryParse(Path.GetFileName(version), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0)
            .Select(version => Path.Combine(version, "bin")).FirstOrDefault(bin => File.Exists(Path.Combine(bin, "initdb")))
            ?? throw new InvalidOperationException("PostgreSQL is missing; ./test installs it.");
        var server = new PostgresServer(Directory.CreateTempSubdirectory("foramen-pg-").FullName, binaries, FreePort());
        if (Environment.UserName == "root")
        {
            await RunAsync("chown", [UserOfTheServer, server.directory]);
        }

        await server.AsItselfAsync("initdb", "-D", server.Data, "-A", "trust", "-U", "foramen", "-E", "UTF8", "--locale=C.UTF-8");
        await server.ControlAsync("start");
        return server;
    }

    /// <summary>A new, empty database; its connection string.</summary>
    public async Task<string> NewDatabaseAsync()
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"home{Interlocked.Increment(ref databases)}");
        await RunAsync(Path.Combine(binaries, "createdb"), ["-h", "127.0.0.1", "-p", Port.ToString(CultureInfo.InvariantCulture), "-U", "foramen", name]);
        return Connection(name);
    }

    /// <summary>Ends every session at once, as a restart of the machine's service does, and starts again.</summary>
    public async Task RestartAsync()
    {
        await ControlAsync("stop", "-m", "immediate");
        await ControlAsync("start");
    }

    /// <summary>Ends every session at once, and does not start again.</summary>
    public async Task StopAsync()
    {
        await ControlAsync("stop", "-m", "immediate");
        stopped = true;
    }

    public async ValueTask DisposeAsync()
    {
        if (!stopped)
        {
            await ControlAsync("stop", "-m", "immediate");
        }

        if (Environment.UserName == "root")
        {
            await RunAsync("chown", ["-R", "root", directory]);
        }

        Directory.Delete(directory, recursive: true);
    }

    private string Data => Path.Combine(directory, "data");

    private string Connection(string database)
        => string.Create(CultureInfo.InvariantCulture, $"Host=127.0.0.1;Port={Port};Username=foramen;Database={database};Maximum Pool Size=40");

    private Task ControlAsync(string verb, params string[] more)
        => AsItselfAsync(
            "pg_ctl",
            [verb, "-D", Data, "-w", "-l", Path.Combine(directory, "log"), "-o", string.Create(CultureInfo.InvariantCulture, $"-p {Port} -c listen_addresses=127.0.0.1 -c unix_socket_directories={directory}"), .. more]);

    private Task AsItselfAsync(string program, params string[] arguments)
    {
        var path = Path.Combine(binaries, program);
        return Environment.UserName == "root"
            ? RunAsync("setpriv", ["--reuid", UserOfTheServer, "--regid", UserOfTheServer, "--clear-groups", path, .. arguments])
            : RunAsync(path, arguments);
    }

    private static async Task RunAsync(string program, string[] arguments)
    {
        // The server outlives pg_ctl and would hold its pipes open, so its words go to a file and nowhere else.
        using var process = Process.Start(new ProcessStartInfo("/bin/sh", ["-c", "exec \"$@\" >/dev/null 2>&1", "sh", program, .. arguments]) { WorkingDirectory = "/" })!;
        await process.WaitForExitAsync();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{Path.GetFileName(program)} {string.Join(' ', arguments)} ended with {process.ExitCode}.");
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
