using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Foramen.HomeBench;

/// <summary>Tests that are run as they are, and their count.</summary>
internal static partial class TestRun
{
    public static async Task<(int Total, int Failed)> RunAsync(string dll, params string[] filters)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", ["exec", dll, "-noColor", "-noLogo", .. filters]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = await process.StandardOutput.ReadToEndAsync();
        await errors;
        await process.WaitForExitAsync();
        var match = Summary().Match(output);
        return match.Success
            ? (Number(match, 1), Number(match, 2) + Number(match, 3))
            : throw new InvalidOperationException($"{dll} ended without a summary.");
    }

    private static int Number(Match match, int group) => int.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex("Total: ([0-9]+), Errors: ([0-9]+), Failed: ([0-9]+)")]
    private static partial Regex Summary();
}
