using System.Diagnostics;
using System.Globalization;
using System.Text;
using Foramen.Home.Tests.TestKit;

namespace Foramen.Home.Tests.Operations;

/// <summary>Home as a process of its own, with everything it says.</summary>
internal sealed class WatchedHome : IAsyncDisposable
{
    private readonly Process process;
    private readonly Task<string> said;
    private readonly Task<string> complained;
    private readonly TaskCompletionSource<string> address = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private WatchedHome(Process process)
    {
        this.process = process;
        said = ReadAsync();
        complained = process.StandardError.ReadToEndAsync();
    }

    public HttpClient Client { get; private set; } = null!;

    public int Port => Client.BaseAddress!.Port;

    public static async Task<WatchedHome> StartAsync(Dictionary<string, string> environment, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [Repository.HomeDll, "--port", "0", .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        var home = new WatchedHome(Process.Start(start)!);
        home.Client = new HttpClient { BaseAddress = new Uri(await home.address.Task.WaitAsync(TimeSpan.FromMinutes(1))) };
        return home;
    }

    /// <summary>SIGTERM, as whoever runs services sends it.</summary>
    public void Terminate()
    {
        using var kill = Process.Start("kill", ["-TERM", process.Id.ToString(CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
    }

    public async Task<int> StopAsync()
    {
        Terminate();
        return await ExitAsync();
    }

    public async Task<int> ExitAsync()
    {
        await process.WaitForExitAsync(TestContext.Current.CancellationToken).WaitAsync(TimeSpan.FromSeconds(30));
        return process.ExitCode;
    }

    public async Task<(string Said, string Complained)> SaidAsync() => (await said, await complained);

    public async ValueTask DisposeAsync()
    {
        Client?.Dispose();
        if (!process.HasExited)
        {
            process.Kill();
            await process.WaitForExitAsync();
        }

        process.Dispose();
    }

    private async Task<string> ReadAsync()
    {
        var all = new StringBuilder();
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            all.AppendLine(line);
            const string Mark = "Foramen Home: ";
            if (line.IndexOf(Mark, StringComparison.Ordinal) is >= 0 and var at)
            {
                address.TrySetResult(line[(at + Mark.Length)..].Split('"')[0].Trim());
            }
        }

        address.TrySetException(new InvalidOperationException("Home ended before it said its address: " + await complained));
        return all.ToString();
    }
}
