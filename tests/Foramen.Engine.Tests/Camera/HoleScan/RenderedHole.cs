using Foramen.Engine.Camera;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Camera;

/// <summary>
/// A scan drawn from its definition: an ellipse with a burr, sampled 8 × 8 within each pixel, blurred by a Gaussian, with noise, written as codes. It shares nothing
/// with the meter.
/// </summary>
internal sealed record RenderedHole
{
    public int Width { get; init; } = 96;

    public int Height { get; init; } = 96;

    public double X { get; init; } = 48;

    public double Y { get; init; } = 48;

    public double LongAxis { get; init; } = 10;

    public double ShortAxis { get; init; } = 10;

    public double Direction { get; init; }

    public double Blur { get; init; } = 1;

    public double Noise { get; init; } = 0.02;

    public double Inside { get; init; } = 0.75;

    public double Outside { get; init; } = 0.06;

    /// <summary>Light outside gained from the left side to the right, as a part of it.</summary>
    public double Slope { get; init; }

    public int Seed { get; init; } = 1;

    public ScanEncoding Encoding { get; init; } = ScanEncoding.Srgb;

    /// <summary>More shapes that are as light as the hole: dust, a second hole, a plate's edge.</summary>
    public Func<double, double, bool> More { get; init; } = (_, _) => false;

    /// <summary>Parts of the hole that are closed.</summary>
    public Func<double, double, bool> Burr { get; init; } = (_, _) => false;

    public double Diameter => 2 * Math.Sqrt(LongAxis * ShortAxis);

    public ScanImage Draw() => ScanImage.FromGrey(Width, Height, Codes(), Encoding);

    public byte[] Codes()
    {
        var cover = Blurred(Cover());
        var chance = new Random(Seed);
        var codes = new byte[Width * Height];
        for (var i = 0; i < codes.Length; i++)
        {
            var outside = Outside * (1 + (Slope * (((i % Width) / (double)Width) - 0.5)));
            var light = outside + ((Inside - outside) * cover[i]) + (Noise * Normal(chance));
            codes[i] = Encoding == ScanEncoding.Srgb ? SrgbTransfer.CodeOf(light) : (byte)Math.Round(255 * Math.Clamp(light, 0, 1));
        }

        return codes;
    }

    private double[] Cover()
    {
        const int Samples = 8;
        var (cos, sin) = (Math.Cos(Direction), Math.Sin(Direction));
        var cover = new double[Width * Height];
        for (var i = 0; i < cover.Length; i++)
        {
            var inside = 0;
            for (var sample = 0; sample < Samples * Samples; sample++)
            {
                var x = (i % Width) + (((sample % Samples) + 0.5) / Samples);
                var y = (i / Width) + (((sample / Samples) + 0.5) / Samples);
                var (u, v) = (((x - X) * cos) + ((y - Y) * sin), ((y - Y) * cos) - ((x - X) * sin));
                var own = (u * u / (LongAxis * LongAxis)) + (v * v / (ShortAxis * ShortAxis)) <= 1 && !Burr(x, y);
                inside += own || More(x, y) ? 1 : 0;
            }

            cover[i] = inside / (double)(Samples * Samples);
        }

        return cover;
    }

    private double[] Blurred(double[] plane)
    {
        if (Blur <= 0)
        {
            return plane;
        }

        var half = (int)Math.Ceiling(4 * Blur);
        var weights = Enumerable.Range(-half, (2 * half) + 1).Select(i => Math.Exp(-i * i / (2 * Blur * Blur))).ToArray();
        var sum = weights.Sum();
        double[] Pass(double[] from, int stepX, int stepY)
        {
            var into = new double[from.Length];
            for (var i = 0; i < into.Length; i++)
            {
                for (var k = -half; k <= half; k++)
                {
                    var x = Math.Clamp((i % Width) + (k * stepX), 0, Width - 1);
                    var y = Math.Clamp((i / Width) + (k * stepY), 0, Height - 1);
                    into[i] += weights[k + half] / sum * from[(y * Width) + x];
                }
            }

            return into;
        }

        return Pass(Pass(plane, 1, 0), 0, 1);
    }

    private static double Normal(Random chance) => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
