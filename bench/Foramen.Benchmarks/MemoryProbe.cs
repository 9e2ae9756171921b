using System.Diagnostics;
using System.Globalization;
using Foramen.Imaging;

namespace Foramen.Benchmarks;

/// <summary>
/// The most memory a process takes for one 12-megapixel photograph, as the system counts it, native libraries included. Run in a process of its own, because a
/// peak cannot be undone.
/// </summary>
internal static class MemoryProbe
{
    /// <summary>In the process of its own: does the job once and prints the peak before and after in bytes.</summary>
    public static void Measure(string jpegFile, bool whole)
    {
        var jpeg = File.ReadAllBytes(jpegFile);
        var before = Peak();
        if (whole)
        {
            new PrintJob().Run(jpeg, 4000, 3000, 1600);
        }
        else
        {
            PhotographReader.Read(jpeg, "bench.jpg");
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{before} {Peak()}"));
    }

    /// <summary>Starts that process and reads what it says: bytes that the job took at most.</summary>
    public static double PeakOf(string jpegFile, bool whole)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!) { RedirectStandardOutput = true };
        start.ArgumentList.Add("memory");
        start.ArgumentList.Add(jpegFile);
        start.ArgumentList.Add(whole ? "print" : "decode");
        using var process = Process.Start(start)!;
        var text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        return double.Parse(parts[1], CultureInfo.InvariantCulture) - double.Parse(parts[0], CultureInfo.InvariantCulture);
    }

    private static long Peak()
    {
        using var process = Process.GetCurrentProcess();
        return process.PeakWorkingSet64;
    }
}
