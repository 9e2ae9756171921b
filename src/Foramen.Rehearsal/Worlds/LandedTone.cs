namespace Foramen.Rehearsal.Worlds;

/// <summary>Where a tone lands on the true curve.</summary>
/// <param name="Total">All its exposure, stops.</param>
/// <param name="Flash">What the flash alone does there, in the unit of which 0 stops is one.</param>
internal readonly record struct LandedTone(double Total, double Flash)
{
    /// <summary>From an image and a flash.</summary>
    /// <param name="imageStops">Exposure by the image, stops.</param>
    /// <param name="flash">Exposure by the flash, in the unit of which 0 stops is one; 0 without.</param>
    public static LandedTone Of(double imageStops, double flash) => new(Math.Log2(Math.Pow(2, imageStops) + flash), flash);
}
