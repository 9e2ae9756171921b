using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>A scene at night and its usual exposure value, to begin with where a meter says nothing.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Lowest">Lower end, EV at ISO 100.</param>
/// <param name="Highest">Upper end, EV at ISO 100.</param>
/// <remarks>
/// Values of the published exposure guide ANSI PH2.7-1986 as remembered (no copy was at hand), rounded to whole steps; lamps have changed since. Worth a stop or two
/// either way, and never as good as a meter.
/// </remarks>
public sealed record NightScene(string Name, ExposureValue Lowest, ExposureValue Highest)
{
    /// <summary>Darkest first.</summary>
    public static IReadOnlyList<NightScene> Known { get; } =
    [
        Of("landscape under a full moon", -3, -2),
        Of("distant skyline of lit buildings", 2, 2),
        Of("floodlit building or monument", 3, 5),
        Of("strings of lamps outdoors", 4, 5),
        Of("street with lit shop windows", 7, 8),
        Of("fair", 7, 7),
        Of("brightly lit night street", 8, 8),
        Of("lit signs", 9, 10),
        Of("skyline ten minutes after sunset", 12, 14),
    ];

    /// <summary>The middle of the two ends.</summary>
    public ExposureValue Middle => ExposureValue.FromAtIso100((Lowest.AtIso100 + Highest.AtIso100) / 2);

    /// <summary>A scene by part of its name.</summary>
    /// <exception cref="RefusalException">None, or more than one.</exception>
    public static NightScene Find(string text)
    {
        var found = string.IsNullOrWhiteSpace(text) ? [] : Known.Where(scene => scene.Name.Contains(text.Trim(), StringComparison.OrdinalIgnoreCase)).ToList();
        return found.Count == 1
            ? found[0]
            : throw new RefusalException($"The night scene is \"{text}\"; write enough of one of these: {string.Join("; ", Known.Select(scene => scene.Name))}.");
    }

    private static NightScene Of(string name, double lowest, double highest)
        => new(name, ExposureValue.FromAtIso100(lowest), ExposureValue.FromAtIso100(highest));
}
