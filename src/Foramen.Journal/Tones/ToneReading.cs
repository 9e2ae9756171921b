using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Journal.Bodies;

namespace Foramen.Journal.Tones;

/// <summary>A tone as it was written down, as the Engine reads it.</summary>
public static class ToneReading
{
    private const double WidestSpread = 5;

    /// <summary>The tone.</summary>
    /// <param name="read">As written down.</param>
    /// <param name="usualSpread">Spread of the reading where none was written down, stops.</param>
    /// <exception cref="RefusalException">A number that no tone can have.</exception>
    public static Tone ToTone(this ToneRead read, Stops usualSpread) => new()
    {
        Name = read.Name,
        Rendering = read.Rendering switch
        {
            WantedRendering.OpenShadow => Rendering.OpenShadow,
            WantedRendering.TexturedHighlight => Rendering.TexturedHighlight,
            WantedRendering.MayBurn => Rendering.MayBurn,
            WantedRendering.MayBlock => Rendering.MayBlock,
            _ => Rendering.Mid,
        },
        Luminance = Luminance.FromCandelasPerSquareMetre(read.LuminanceCandelasPerSquareMetre),
        ActinicRatio = read.ActinicRatio ?? 1,
        ReadingLimit = read.Limit switch
        {
            ReadingLimit.AtLeast => LuminanceLimit.AtLeast,
            ReadingLimit.AtMost => LuminanceLimit.AtMost,
            _ => LuminanceLimit.Exact,
        },
        MeterSpread = Stops.FromValue(Math.Min(WidestSpread, read.SdStops ?? usualSpread.Value)),
        Position = read is { PhotographX: { } x, PhotographY: { } y } ? PhotographPosition.FromFractions(x, y) : null,
    };
}
