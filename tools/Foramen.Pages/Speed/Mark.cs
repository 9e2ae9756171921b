using System.Globalization;
using System.Text.RegularExpressions;

namespace Foramen.Pages.Speed;

/// <summary>Something that must be reached, as bench/marks.md has it.</summary>
/// <param name="Id">By which a result names it.</param>
/// <param name="What">In words.</param>
/// <param name="MustBe">A limit such as <c>≤ 1.5</c> or <c>&lt; 2 %</c>, or in words what a test holds.</param>
/// <param name="By">The command that measures it, or the test that holds it.</param>
public sealed partial record Mark(string Id, string What, string MustBe, string By)
{
    /// <summary>Whether it is a figure that is measured; else a test holds it.</summary>
    public bool IsMeasured => Limit().IsMatch(MustBe);

    /// <summary>Whether a figure reaches it.</summary>
    /// <exception cref="PageException">A figure that is no number, or in another unit.</exception>
    public bool IsReachedBy(string figure)
    {
        var (limit, found) = (Limit().Match(MustBe), Figure().Match(figure));
        if (!found.Success || found.Groups[2].Value != limit.Groups[3].Value)
        {
            throw new PageException($"The figure of {Id} is \"{figure}\"; write it like its limit, {MustBe}.");
        }

        var (value, bound) = (Number(found.Groups[1].Value), Number(limit.Groups[2].Value));
        return limit.Groups[1].Value switch
        {
            "≤" => value <= bound,
            "<" => value < bound,
            "≥" => value >= bound,
            _ => value > bound,
        };
    }

    private static double Number(string text) => double.Parse(text.Replace('−', '-'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^([≤<≥>]) ([0-9.]+) ?(\D*)$")]
    private static partial Regex Limit();

    [GeneratedRegex(@"^([-−]?[0-9.]+) ?(\D*)$")]
    private static partial Regex Figure();
}
