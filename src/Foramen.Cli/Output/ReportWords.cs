using System.Globalization;

namespace Foramen.Cli.Output;

/// <summary>Times and names as reports and their words write them.</summary>
internal static class ReportWords
{
    /// <summary>A time as one would say it: 43 s, 2 min 5 s.</summary>
    public static string Spoken(double seconds)
    {
        var culture = CultureInfo.CurrentCulture;
        if (seconds < 10)
        {
            return string.Create(culture, $"{seconds:0.0} s");
        }

        var whole = (long)Math.Round(seconds);
        return whole < 100 ? string.Create(culture, $"{whole} s")
            : whole < 3600 ? string.Create(culture, $"{whole / 60} min {whole % 60} s")
            : string.Create(culture, $"{whole / 3600} h {whole / 60 % 60} min");
    }

    /// <summary>A value's name in JSON: mayBurn.</summary>
    public static string Camel<T>(T value)
        where T : struct, Enum
    {
        var name = value.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }

    /// <summary>The name in JSON as words: may burn.</summary>
    public static string Words(string camel)
        => camel == "sceneRange" ? "the range of the scene" : string.Concat(camel.Select(c => char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : c.ToString()));
}
