using System.Diagnostics;

namespace Foramen.Home.Tests.Faults;

/// <summary>Home as a process of its own, so that it, and only it, can be killed.</summary>
internal sealed class HomeChild : IDisposable
{
    private readonly Process process;

    private HomeChild(Process process, string address) => (this.process, Address) = (process, address);

    public string Address { get; }

    public static async Task<HomeChild> StartAsync(string dll, params string[] arguments)
    {
        var process = Process.Start(new ProcessStartInfo("dotnet", [dll, "--port", "0", .. arguments])
        {
            RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = Path.GetDirectoryName(dll)!,
        })!;
        var errors = process.StandardError.ReadToEndAsync();
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            const string Mark = "Foramen Home: ";
            if (line.StartsWith(Mark, StringComparison.Ordinal))
            {
                _ = process.StandardOutput.ReadToEndAsync();
                return new HomeChild(process, line[Mark.Length..]);
            }
        }

        throw new InvalidOperationException("Home ended before it said its address: " + await errors);
    }

    /// <summary>SIGKILL: nothing is flushed, nothing is said.</summary>
    public async Task KillAsync()
    {
        process.Kill();
        await process.WaitForExitAsync();
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            process.Kill();
            process.WaitForExit();
        }

        process.Dispose();
    }
}
