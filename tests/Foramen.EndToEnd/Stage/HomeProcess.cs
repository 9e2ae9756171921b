using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Foramen.EndToEnd.Stage;

/// <summary>Foramen Home as its own process on a free port of this machine.</summary>
public sealed partial class HomeProcess : IDisposable
{
    // ./test names the folder with what is shipped: the app trimmed, as people load it. Without it, what was built last.
    private static readonly string Folder = Environment.GetEnvironmentVariable("FORAMEN_SHIPPED")
        ?? Path.Combine(Repository.Root, "src", "Foramen.Home", "bin", Repository.Configuration, "net10.0");

    private readonly Process process;

    private HomeProcess(Process process, string address)
    {
        this.process = process;
        Address = address;
    }

    /// <summary>Where it listens, without a slash at the end.</summary>
    public string Address { get; }

    /// <summary>Starts it, with a demo outing where one is named. It keeps no journal unless told where: the journeys' phones must not meet each other.</summary>
    public static async Task<HomeProcess> StartAsync(string? demo = null, string data = "none", params string[] more)
    {
        var dll = Path.Combine(Folder, "Foramen.Home.dll");
        var process = Process.Start(new ProcessStartInfo("dotnet", [dll, "--port", "0", "--data", data, .. demo is null ? Array.Empty<string>() : ["--demo", demo], .. more])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Folder,
        })!;
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        using var limit = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        while (await process.StandardOutput.ReadLineAsync(limit.Token) is { } line)
        {
            if (AddressLine().Match(line) is { Success: true } match)
            {
                _ = process.StandardOutput.ReadToEndAsync(CancellationToken.None);
                return new HomeProcess(process, match.Groups["address"].Value);
            }
        }

        throw new InvalidOperationException("Home ended before it said its address.");
    }

    public void Dispose()
    {
        process.Kill();
        process.Dispose();
    }

    [GeneratedRegex("^Foramen Home: (?<address>http://127\\.0\\.0\\.1:[0-9]+)$")]
    private static partial Regex AddressLine();
}
