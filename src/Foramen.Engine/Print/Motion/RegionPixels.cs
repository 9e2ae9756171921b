namespace Foramen.Engine.Print;

/// <summary>The pixels of a region: where each lies on the sheet and in the region, found once so that a slider can be followed.</summary>
internal sealed class RegionPixels
{
    private readonly List<int> indices = [];
    private readonly List<float> us = [];
    private readonly List<float> vs = [];
    private readonly List<float> falloffs = [];
    private readonly List<float> parts = [];

    /// <summary>How many.</summary>
    public int Count => indices.Count;

    /// <summary>Places in the sheet's rows of pixels.</summary>
    public int[] Index => field ??= [.. indices];

    /// <summary>Places in the region, to the right.</summary>
    public float[] U => field ??= [.. us];

    /// <summary>Places in the region, downwards.</summary>
    public float[] V => field ??= [.. vs];

    /// <summary>Light over that on the axis for the same luminance.</summary>
    public float[] Falloff => field ??= [.. falloffs];

    /// <summary>How much of the motion there is, 0 to 1; the rest is as it was.</summary>
    public float[] Part => field ??= [.. parts];

    /// <summary>One more; only before any is read.</summary>
    public void Add(int index, float u, float v, float falloff, float part)
    {
        indices.Add(index);
        us.Add(u);
        vs.Add(v);
        falloffs.Add(falloff);
        parts.Add(part);
    }

    /// <summary>Puts light, without falloff, on the sheet.</summary>
    public void Put(float[] lux, float[] light)
    {
        var (index, falloff, part) = (Index, Falloff, Part);
        for (var i = 0; i < index.Length; i++)
        {
            var at = index[i];
            lux[at] += part[i] * ((light[i] * falloff[i]) - lux[at]);
        }
    }
}
