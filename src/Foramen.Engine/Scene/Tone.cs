using Foramen.Engine.Quantities;

namespace Foramen.Engine.Scene;

/// <summary>A named luminance in the scene and how it should come out.</summary>
public sealed record Tone
{
    /// <summary>What the user calls it: "elevator wall". 1 to 80 characters.</summary>
    /// <exception cref="RefusalException">Empty or too long.</exception>
    public required string Name
    {
        get;
        init => field = string.IsNullOrWhiteSpace(value) || value.Length > 80
            ? throw new RefusalException($"The tone's name \"{value}\" should have 1 to 80 characters.")
            : value;
    }

    /// <summary>How it is wanted.</summary>
    public required Rendering Rendering { get; init; }

    /// <summary>Luminance as a meter sees it.</summary>
    public required Luminance Luminance { get; init; }

    /// <summary>
    /// How bright the surface is to the paper over how bright it is to the meter, beside a neutral surface in the same light: 1 for neutral,
    /// less for brick, more for blue. 0.0001 to 100.
    /// </summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public double ActinicRatio { get; init => field = Guard.Within(value, 0.0001, 100, "the actinic ratio"); } = 1;

    /// <summary>Whether what the paper sees is known, or only bounded because the photograph is blown or blocked there.</summary>
    public LuminanceLimit ReadingLimit { get; init; }

    /// <summary>Spread of the reading, one standard deviation, 0 to 5 stops.</summary>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public required Stops MeterSpread
    {
        get;
        init
        {
            Guard.Within(value.Value, 0, 5, "the spread of the reading", "stops");
            field = value;
        }
    }

    /// <summary>Where in the photograph it lies; null for a hand reading.</summary>
    public PhotographPosition? Position { get; init; }

    /// <summary>Luminance as the paper sees it, on a scale where a neutral surface keeps its luminance.</summary>
    public Luminance ActinicLuminance => Luminance.FromCandelasPerSquareMetre(Luminance.CandelasPerSquareMetre * ActinicRatio);
}
