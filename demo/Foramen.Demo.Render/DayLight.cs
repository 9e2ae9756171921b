namespace Foramen.Demo.Render;

/// <summary>The light of the scene: illuminance on surfaces over π, so that times a reflectance it is luminance in cd/m².</summary>
/// <param name="Sun">From the sun on a surface that faces it.</param>
/// <param name="Sky">From the sky in open shade.</param>
/// <param name="SkyBright">Luminance of the blue sky low down.</param>
/// <param name="CloudBright">Luminance of the clouds' tops.</param>
internal sealed record DayLight(Rgb Sun, Rgb Sky, double SkyBright, double CloudBright)
{
    /// <summary>A clear afternoon: 18 % grey in the sun is about 3600 cd/m².</summary>
    public static DayLight Afternoon { get; } = new(new Rgb(19800, 18200, 16200), new Rgb(1500, 1900, 2700), 5200, 17500);

    /// <summary>High thin cloud.</summary>
    public static DayLight Overcast { get; } = new(new Rgb(1200, 1200, 1250), new Rgb(2900, 3000, 3200), 5200, 6800);

    /// <summary>Dusk: the lamps balance the sky.</summary>
    public static DayLight Dusk { get; } = new(new Rgb(0, 0, 0), new Rgb(2.6f, 3.4f, 5.5f), 9, 12);

    public bool LampsLit => Sun.G < 1;
}
