using Foramen.Engine.Quantities;

namespace Foramen.Engine.Camera;

/// <summary>
/// The spot of the hole on a grid of square pixels: each weight is the spot's energy over the pixel's area. A square of odd size, zero outside the
/// circle that fits, the same when mirrored or turned, and adding up to one. Immutable.
/// </summary>
/// <remarks>
/// The faint far rings do not fit in: of a usual hole two parts in a hundred of the light fall farther than 0.9 mm, as an even veil. They are given
/// back in proportion, so that even areas keep their light; <see cref="HeldEnergy"/> says how much was truly inside.
/// </remarks>
public sealed class HoleImageKernel
{
    /// <summary>Part of the energy the kernel should hold where nobody has said.</summary>
    public const double UsualEnergy = 0.95;

    /// <summary>Most pixels from the middle to the edge.</summary>
    public const int MostHalfWidth = 64;

    private readonly float[] weights;

    private HoleImageKernel(int halfWidth, float[] weights, double heldEnergy)
    {
        HalfWidth = halfWidth;
        this.weights = weights;
        HeldEnergy = heldEnergy;
    }

    /// <summary>Pixels from the middle to the edge; 0 for a single weight.</summary>
    public int HalfWidth { get; }

    /// <summary>Pixels from edge to edge, odd.</summary>
    public int Size => (2 * HalfWidth) + 1;

    /// <summary>Part of the spot's energy that fell inside before the weights were made to add up to one.</summary>
    public double HeldEnergy { get; }

    /// <summary>Weights, row by row.</summary>
    public ReadOnlySpan<float> Weights => weights;

    /// <summary>The spot on a grid.</summary>
    /// <param name="spread">The spot.</param>
    /// <param name="pitchMillimetres">From pixel to pixel, 0.0005 to 100 mm.</param>
    /// <param name="energy">Part of the energy to hold, 0.5 to 0.99; the size follows from it.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static HoleImageKernel Of(PointSpread spread, double pitchMillimetres, double energy = UsualEnergy)
    {
        Guard.Within(pitchMillimetres, 0.0005, 100, "the pixel's size", "mm");
        Guard.Within(energy, 0.5, 0.99, "the part of the energy to hold");
        var half = (int)Math.Ceiling((spread.DiameterHolding(energy).Millimetres / 2 / pitchMillimetres) - 0.5);
        return WithHalfWidth(spread, pitchMillimetres, Math.Clamp(half, 0, MostHalfWidth));
    }

    /// <summary>The spot on a grid, in a square of given size.</summary>
    /// <param name="spread">The spot.</param>
    /// <param name="pitchMillimetres">From pixel to pixel, 0.0005 to 100 mm.</param>
    /// <param name="halfWidth">0 to 64.</param>
    /// <exception cref="RefusalException">Outside the ranges.</exception>
    public static HoleImageKernel WithHalfWidth(PointSpread spread, double pitchMillimetres, int halfWidth)
    {
        Guard.Within(pitchMillimetres, 0.0005, 100, "the pixel's size", "mm");
        Guard.Within(halfWidth, 0, MostHalfWidth, "the kernel's half width", "pixels");
        if (halfWidth == 0)
        {
            return new HoleImageKernel(0, [1], spread.EnergyWithin(Length.FromMillimetres(pitchMillimetres / 2)));
        }

        // One octant is integrated, the other seven are its mirror images. Fine enough to give ten samples to the circle that holds half; of a pixel wider than the spot
        // only the part is sampled that the spot reaches.
        var across = Math.Min(pitchMillimetres, 2 * spread.ComputedRadius.Millimetres);
        var samples = Math.Clamp((int)Math.Ceiling(10 * across / spread.DiameterHolding(0.5).Millimetres), 4, 40);
        var size = (2 * halfWidth) + 1;
        var energies = new double[size * size];
        var sum = 0.0;
        var reach = (halfWidth + 0.5) * (halfWidth + 0.5);
        for (var y = 0; y <= halfWidth; y++)
        {
            for (var x = 0; x <= y; x++)
            {
                if ((x * x) + (y * y) > reach)
                {
                    continue;
                }

                var energy = PixelEnergy(spread, x, y, pitchMillimetres, samples);
                foreach (var (dx, dy) in new HashSet<(int, int)> { (x, y), (-x, y), (x, -y), (-x, -y), (y, x), (-y, x), (y, -x), (-y, -x) })
                {
                    energies[((halfWidth + dy) * size) + halfWidth + dx] = energy;
                    sum += energy;
                }
            }
        }

        return new HoleImageKernel(halfWidth, [.. energies.Select(energy => (float)(energy / sum))], sum);
    }

    private static double PixelEnergy(PointSpread spread, int x, int y, double pitch, int samples)
    {
        var reach = spread.ComputedRadius.Millimetres / pitch;
        var (left, width) = Within(x, reach);
        var (top, height) = Within(y, reach);
        var sum = 0.0;
        for (var j = 0; j < samples; j++)
        {
            for (var i = 0; i < samples; i++)
            {
                var dx = left + (width * ((i + 0.5) / samples));
                var dy = top + (height * ((j + 0.5) / samples));
                sum += spread.DensityAt(pitch * Math.Sqrt((dx * dx) + (dy * dy)));
            }
        }

        return sum * width * height * pitch * pitch / (samples * samples);
    }

    // The part of a pixel's side that lies within reach of the middle, pixels: where it begins, and how long it is.
    private static (double From, double Long) Within(int place, double reach)
    {
        var from = Math.Max(place - 0.5, -reach);
        return (from, Math.Max(0, Math.Min(place + 0.5, reach) - from));
    }
}
