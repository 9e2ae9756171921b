using System.Diagnostics;

namespace Foramen.Mutants;

/// <summary>A worker as the director sees it: asked a line, it answers a line in time, or it is ended.</summary>
internal sealed class WorkerProcess : IAsyncDisposable
{
    // A mutant may fill the memory; two gigabytes are enough for every test.
    private const string HeapLimit = "0x80000000";

    private readonly Process process;

    /// <param name="changed">The name of the assembly with the mutants.</param>
    public WorkerProcess(string changed)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(Environment.GetCommandLineArgs()[0]);
        start.ArgumentList.Add("worker");
        start.ArgumentList.Add(changed);
        start.Environment["DOTNET_GCHeapHardLimit"] = HeapLimit;
        process = Process.Start(start) ?? throw new InvalidOperationException("The worker did not start.");

        // A mutant that overflows the stack fills it.
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
    }

    /// <summary>Whether the process ended over what it was asked.</summary>
    public bool Ended { get; private set; }

    /// <summary>Asks, and waits for the answer.</summary>
    /// <returns>The answer; null if the process ended over it.</returns>
    /// <exception cref="TimeoutException">No answer in time.</exception>
    public async Task<string?> Ask(string line, TimeSpan patience)
    {
        await process.StandardInput.WriteLineAsync(line).ConfigureAwait(false);
        await process.StandardInput.FlushAsync().ConfigureAwait(false);
        var answer = await process.StandardOutput.ReadLineAsync().WaitAsync(patience).ConfigureAwait(false);
        Ended = answer is null;
        return answer;
    }

    /// <summary>The names of all tests; a test's place in the list is its number.</summary>
    public async Task<IReadOnlyList<string>> List(TimeSpan patience)
    {
        var names = new List<string>();
        for (var name = await Ask("list", patience).ConfigureAwait(false); !string.IsNullOrEmpty(name); name = await process.StandardOutput.ReadLineAsync().ConfigureAwait(false))
        {
            names.Add(name);
        }

        return names;
    }

    public async ValueTask DisposeAsync()
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync().ConfigureAwait(false);
        process.Dispose();
    }
}
