using System.Diagnostics;

namespace Foramen.Cli.Output;

/// <summary>Progress as lines on the error stream, silent for work that takes less than a second.</summary>
internal sealed class LineProgress(TextWriter errors, string what) : IProgress<double>
{
    private readonly long started = Stopwatch.GetTimestamp();
    private readonly Lock gate = new();
    private int tenthShown = -1;

    public void Report(double value)
    {
        var tenth = (int)(Math.Clamp(value, 0, 1) * 10);
        lock (gate)
        {
            if (tenth > tenthShown && Stopwatch.GetElapsedTime(started) > TimeSpan.FromSeconds(1))
            {
                tenthShown = tenth;
                errors.WriteLine($"{what}: {tenth * 10} %");
            }
        }
    }
}
