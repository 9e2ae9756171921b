using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace Foramen.Cli.Tests;

/// <summary>One run of the prompt in this process, with what it printed.</summary>
internal sealed record PromptRun(int ExitCode, string Output, string Errors)
{
    public static string Kit(string file) => Path.Combine(AppContext.BaseDirectory, "kit", file);

    public static string Moving => Path.Combine(AppContext.BaseDirectory, "demo", "moving.json");

    public static string Demo => Path.Combine(AppContext.BaseDirectory, "demo", "canal-basin.jpg");

    public static async Task<PromptRun> OfAsync(params string[] arguments)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var errors = new StringWriter(CultureInfo.InvariantCulture);
        var exitCode = await Prompt.RunAsync(arguments, output, errors, TestContext.Current.CancellationToken);
        return new PromptRun(exitCode, output.ToString(), errors.ToString());
    }

    /// <summary>The JSON printed, once it is shown to follow its schema.</summary>
    public JsonNode Json(string schema)
    {
        Assert.Equal(0, ExitCode);
        var node = JsonNode.Parse(Output)!;
        var path = Path.Combine(AppContext.BaseDirectory, "schemas", schema + ".schema.json");
        var result = JsonSchema.FromText(File.ReadAllText(path)).Evaluate(JsonSerializer.SerializeToElement(node), new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, $"{schema}: {string.Join("; ", (result.Details ?? []).Where(d => d.Errors is not null).SelectMany(d => d.Errors!.Select(e => $"{d.InstanceLocation} {e.Value}")))}\n{Output}");
        return node;
    }

    /// <summary>Asserts that the input was refused in one sentence, with exit code 2 and nothing on standard output.</summary>
    public void IsRefused(string containing)
    {
        Assert.Equal(2, ExitCode);
        Assert.Empty(Output);
        var sentence = Errors.Trim();
        Assert.DoesNotContain('\n', sentence);
        Assert.DoesNotContain("   at ", sentence, StringComparison.Ordinal);
        Assert.Matches("[.?]$", sentence);
        Assert.Contains(containing, sentence, StringComparison.OrdinalIgnoreCase);
    }
}
