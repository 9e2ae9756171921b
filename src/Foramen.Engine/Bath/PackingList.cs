using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>A kit plan as lines to check off, in our own words.</summary>
public static class PackingList
{
    /// <summary>The lines, solutions first, then what keeps people and water safe.</summary>
    public static IReadOnlyList<string> For(KitPlan plan)
    {
        var lines = new List<string> { Text($"{plan.Paper} sheets of paper in a lightproof box") };
        foreach (var liquid in plan.Liquids)
        {
            var name = Name(liquid.Bath);
            lines.Add(liquid.Concentrate.Millilitres > 0
                ? Text($"{name}: {Amount(liquid.Working)}, from {Amount(liquid.Concentrate)} concentrate and {Amount(liquid.Water)} water")
                : Text($"{name}: {Amount(liquid.Water)} water"));
        }

        if (plan.TopUps.Millilitres > 0)
        {
            lines.Add(Text($"of the developer, {Amount(plan.TopUps)} in a bottle of its own for topping up"));
        }

        lines.Add(Text($"waste containers for {Amount(plan.Waste)}, with labels and tight caps"));
        lines.AddRange(
        [
            "safety data sheets of the chemicals",
            "gloves, and spare ones",
            "eye protection",
            "clean water for eyes and hands",
            "paper towels and a waste bag",
            "a tray or bag that holds a leak",
            "a thermometer, a measuring cup, a funnel",
        ]);
        return lines;
    }

    private static string Name(ProcessingBath bath) => bath switch
    {
        ProcessingBath.Developer => "developer",
        ProcessingBath.Stop => "stop bath",
        ProcessingBath.Rinse => "rinse",
        ProcessingBath.Fix => "fixer",
        ProcessingBath.Wash => "wash",
        _ => throw new ArgumentOutOfRangeException(nameof(bath)),
    };

    private static string Amount(Volume volume)
        => volume.Millilitres >= 1000 ? Text($"{volume.Litres:0.0} l") : Text($"{volume.Millilitres:0} ml");

    private static string Text(FormattableString sentence) => sentence.ToString(CultureInfo.InvariantCulture);
}
