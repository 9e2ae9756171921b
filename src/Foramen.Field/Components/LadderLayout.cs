namespace Foramen.Field.Components;

/// <summary>Keeps labels apart that would fall on one another.</summary>
internal static class LadderLayout
{
    /// <summary>Moves labels as little as needed so that neighbours stand at least <paramref name="gap"/> apart, within the bounds.</summary>
    /// <param name="items">In the order from top to bottom.</param>
    /// <param name="wanted">Where an item would like to stand, downwards.</param>
    /// <param name="gap">Least distance.</param>
    /// <param name="from">Upper bound of the first.</param>
    /// <param name="to">Lower bound of the last, kept as far as there is room.</param>
    public static IReadOnlyList<(T Item, double At)> Spread<T>(IReadOnlyList<T> items, Func<T, double> wanted, double gap, double from, double to)
    {
        var at = new double[items.Count];
        for (var i = 0; i < items.Count; i++)
        {
            at[i] = Math.Max(wanted(items[i]), i == 0 ? from : at[i - 1] + gap);
        }

        for (var i = items.Count - 1; i >= 0; i--)
        {
            at[i] = Math.Max(from + (i * gap), Math.Min(at[i], i == items.Count - 1 ? to : at[i + 1] - gap));
        }

        return [.. items.Zip(at)];
    }
}
