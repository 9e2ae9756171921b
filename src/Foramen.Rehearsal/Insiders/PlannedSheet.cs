using Foramen.Rehearsal.Lines;
using Foramen.Rehearsal.Worlds;

namespace Foramen.Rehearsal.Insiders;

/// <summary>A sheet and what is done to it, as an insider sees it.</summary>
internal sealed class PlannedSheet
{
    private readonly Dictionary<CloudFamily, LightCourse?> lights = [];

    public PlannedSheet(SheetLine seen, ExposeLine done)
    {
        (Seen, Done) = (seen, done);
        Sky = SkyOf(seen.Sky);
        Tones = [.. seen.Tones.Where(tone => tone.Rendering is "openShadow" or "mid" or "texturedHighlight")];
        Card = (seen.CardEv ?? 0) + WorldTruth.StopsAtEvZero;
    }

    private PlannedSheet(PlannedSheet other, ExposeLine done)
        => (Seen, Done, Sky, Tones, Card, lights) = (other.Seen, done, other.Sky, other.Tones, other.Card, other.lights);

    public SheetLine Seen { get; }

    public ExposeLine Done { get; }

    /// <summary>Place of its sky among all.</summary>
    public int Sky { get; }

    /// <summary>The tones that must land somewhere.</summary>
    public IReadOnlyList<ToneSeen> Tones { get; }

    /// <summary>Reading of the card, lg2 of cd/m².</summary>
    public double Card { get; }

    /// <summary>The same with another flash; in the same time the light takes the same course.</summary>
    public PlannedSheet Flashed(double seconds) => new(this, Done with { FlashSeconds = seconds });

    /// <summary>The course of the light under such clouds.</summary>
    public LightCourse? LightUnder(CloudFamily family)
    {
        if (!lights.TryGetValue(family, out var course))
        {
            lights[family] = course = LightCourse.Of(family, Sky, Seen.Sky, Done.Seconds);
        }

        return course;
    }

    private static int SkyOf(string seen)
    {
        for (var i = 0; i < SkyTruth.All.Count; i++)
        {
            if (seen == SkyTruth.All[i].Name || seen.StartsWith(SkyTruth.All[i].Name + ",", StringComparison.Ordinal))
            {
                return i;
            }
        }

        throw new ArgumentOutOfRangeException(nameof(seen), seen, "No such sky is among those of the rehearsal.");
    }
}
