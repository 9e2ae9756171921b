using Foramen.Engine.Light;

namespace Foramen.Engine.Scene;

/// <summary>One number for an area of a photograph, on the scale of its white: 1 for full code in all channels.</summary>
/// <param name="Value">Luminance over the luminance of white.</param>
/// <param name="Limit">Whether it is only a bound.</param>
internal readonly record struct AreaReading(double Value, LuminanceLimit Limit)
{
    /// <summary>Reads an area as a sight sees it.</summary>
    public static AreaReading Of(ScenePhotograph photo, PhotographArea area, PaperSight sight)
    {
        var sums = new ChannelSums(photo.Facts.Colour, sight, 1);
        var pixels = new List<(float Value, LuminanceLimit Limit)>();
        area.ForEachRun(photo.Width, photo.Height, (row, from, to) =>
        {
            var codes = photo.Rgba.Span;
            for (var column = from; column < to; column++)
            {
                var value = sums.Read(codes.Slice(4 * ((row * photo.Width) + column), 4), out var limit);
                pixels.Add((value, limit));
            }
        });
        return area.ByMedian ? Median(pixels) : Mean(pixels);
    }

    private static AreaReading Median(List<(float Value, LuminanceLimit Limit)> pixels)
    {
        // A bound stands outside all exact values whatever its own value: blown ones above, blocked ones below.
        static int Rank(LuminanceLimit limit) => limit switch { LuminanceLimit.AtMost => 0, LuminanceLimit.Exact => 1, _ => 2 };
        pixels.Sort((a, b) => Rank(a.Limit) != Rank(b.Limit) ? Rank(a.Limit).CompareTo(Rank(b.Limit)) : a.Value.CompareTo(b.Value));
        var (value, limit) = pixels[pixels.Count / 2];
        return new AreaReading(value, limit);
    }

    private static AreaReading Mean(List<(float Value, LuminanceLimit Limit)> pixels)
    {
        double sum = 0, blocked = 0;
        var blown = false;
        foreach (var (value, limit) in pixels)
        {
            sum += value;
            blocked += limit == LuminanceLimit.AtMost ? value : 0;
            blown |= limit == LuminanceLimit.AtLeast;
        }

        return new AreaReading(
            sum / pixels.Count,
            blown ? LuminanceLimit.AtLeast : blocked > LuminanceMap.BlockedShareThatMatters * sum ? LuminanceLimit.AtMost : LuminanceLimit.Exact);
    }
}
