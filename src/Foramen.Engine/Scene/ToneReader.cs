using Foramen.Engine.Light;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>Reads tones from a photograph or from a hand meter.</summary>
public static class ToneReader
{
    /// <summary>
    /// Spread of a luminance read from a photograph, one standard deviation: a third of a stop. An assumption; cameras render pictures for the
    /// eye, and brighten shadows or hold highlights back by more than that in scenes of high contrast.
    /// </summary>
    public static Stops PhotographSpread { get; } = Stops.FromValue(1 / 3.0);

    /// <summary>A tone from a photograph or a hand reading.</summary>
    /// <param name="name">What the user calls it.</param>
    /// <param name="rendering">How it is wanted.</param>
    /// <param name="source">Where its luminance comes from.</param>
    /// <param name="photo">The photograph; may be null for a hand reading.</param>
    /// <param name="sight">The paper's sight in the light of the scene.</param>
    /// <exception cref="RefusalException">There is no photograph, it is not anchored, or the name is not usable.</exception>
    public static Tone Read(string name, Rendering rendering, ToneSource source, ScenePhotograph? photo, PaperSight sight) => source switch
    {
        HandReading reading => FromHand(name, rendering, reading),
        PhotographArea area => FromPhotograph(name, rendering, area, photo ?? throw NoPhotograph(name), sight),
        _ => throw new RefusalException($"The tone \"{name}\" has no source; give a place in the photograph or a hand reading."),
    };

    /// <summary>A tone from a hand reading.</summary>
    /// <exception cref="RefusalException">The luminance is zero, or the name not usable.</exception>
    public static Tone FromHand(string name, Rendering rendering, HandReading reading) => new()
    {
        Name = name,
        Rendering = rendering,
        Luminance = reading.Luminance.CandelasPerSquareMetre > 0
            ? reading.Luminance
            : throw new RefusalException($"The reading of the tone \"{name}\" is zero; a meter shows more than that for anything a sheet can hold."),
        ActinicRatio = reading.ActinicRatio,
        MeterSpread = reading.Spread,
    };

    /// <summary>A tone from a place in a photograph.</summary>
    /// <exception cref="RefusalException">The photograph is not anchored, or the name not usable.</exception>
    public static Tone FromPhotograph(string name, Rendering rendering, PhotographArea area, ScenePhotograph photo, PaperSight sight)
    {
        if (photo.WhiteLuminance is not { } white)
        {
            throw new RefusalException(
                $"The tone \"{name}\" cannot be read: the photograph does not say how it was exposed; give one meter reading of a place in it.");
        }

        var eye = AreaReading.Of(photo, area, PaperSight.Eye);
        var paper = AreaReading.Of(photo, area, sight);
        return new Tone
        {
            Name = name,
            Rendering = rendering,
            Luminance = Luminance.FromCandelasPerSquareMetre(eye.Value * white.CandelasPerSquareMetre),
            ActinicRatio = Math.Max(0.0001, paper.Value / eye.Value),
            ReadingLimit = paper.Limit,
            MeterSpread = PhotographSpread,
            Position = area.Middle,
        };
    }

    private static RefusalException NoPhotograph(string name)
        => new($"The tone \"{name}\" names a place in a photograph, but there is no photograph; add one or give a hand reading.");
}
