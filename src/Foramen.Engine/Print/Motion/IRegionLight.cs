namespace Foramen.Engine.Print;

/// <summary>The light of a region in which something moved, on the scale on which lights that take turns add.</summary>
internal interface IRegionLight
{
    /// <summary>Light at a place of the region; no number where it is not known.</summary>
    float At(double u, double v);

    /// <summary>How much of it there is at a place, 0 to 1; the rest is as it was.</summary>
    double Part(double u, double v);

    /// <summary>What is left to be seen of the motion.</summary>
    /// <param name="density">How dark the sheet becomes under a light.</param>
    RegionTrace Trace(Func<float, double> density);
}
