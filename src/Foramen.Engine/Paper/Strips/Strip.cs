using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Paper;

/// <summary>A strip that was made under one light and read: by densities, by eye, or both.</summary>
public sealed record Strip
{
    /// <summary>How well the light on the sheet is usually known: meter, hole and colour together (an assumption).</summary>
    public static Stops UsualLightSpread { get; } = Stops.FromValue(0.25);

    /// <summary>Light on the sheet as a meter would count it, the same for all patches.</summary>
    public required Illuminance OnSheet { get; init; }

    /// <summary>Its colour.</summary>
    public required LightColour Light { get; init; }

    /// <summary>Standard deviation of <see cref="OnSheet"/>, of this strip against the truth and against other strips.</summary>
    public Stops LightSpread { get; init; } = UsualLightSpread;

    /// <summary>Patches with densities, in any order; also masked and fogged ones.</summary>
    public IReadOnlyList<StripPatch> Patches { get; init; } = [];

    /// <summary>Times of the patches in order of rising exposure, which readings by eye refer to; not needed without such readings.</summary>
    public IReadOnlyList<Duration> Times { get; init; } = [];

    /// <summary>Readings by eye.</summary>
    public IReadOnlyList<EyeReading> Eye { get; init; } = [];

    /// <summary>Refuses what cannot be.</summary>
    /// <exception cref="RefusalException">No light, times that do not rise, or a reading of a patch that is not there.</exception>
    public void Check()
    {
        Guard.Within(OnSheet.Lux, 1e-6, 1e6, "the light on the strip", "lx");
        Guard.Within(LightSpread.Value, 0, 3, "the spread of the light on the strip", "stops");
        Guard.Within(Patches.Count, 0, 500, "the number of patches");
        for (var i = 0; i < Times.Count; i++)
        {
            Guard.Within(Times[i].Seconds, 0.01, 86_400, $"the time of patch {i + 1}", "s");
            if (i > 0 && Times[i] <= Times[i - 1])
            {
                throw new RefusalException($"Patch {i + 1} got no more light than patch {i}; list the patches from least to most light.");
            }
        }

        foreach (var reading in Eye)
        {
            Guard.Within(reading.Step, 1, Times.Count + (reading.Kind == EyeReadingKind.FirstTone ? 1 : 0), "the patch that was read by eye");
            if (reading.Kind == EyeReadingKind.Match && reading.Grey is null)
            {
                throw new RefusalException("A match by eye needs the density of the grey that was matched.");
            }
        }
    }
}
