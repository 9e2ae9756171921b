using Foramen.Engine.Camera;

namespace Foramen.Engine.Print;

/// <summary>A scan averaged over squares, as the ln of their light: enough to find things on.</summary>
internal sealed class ReducedScan
{
    private const double Darkest = 1e-4;
    private readonly float[] ln;

    private ReducedScan(int width, int height, int step, float[] ln) => (Width, Height, Step, this.ln) = (width, height, step, ln);

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>Side of a square, pixels of the scan.</summary>
    public int Step { get; }

    /// <summary>At most so many squares along the long side; what is left over at the right and the bottom is not looked at.</summary>
    public static ReducedScan Of(ScanImage scan, int most)
    {
        var step = Math.Max(1, (Math.Max(scan.Width, scan.Height) + most - 1) / most);
        var (width, height) = (Math.Max(1, scan.Width / step), Math.Max(1, scan.Height / step));
        var ln = new float[width * height];
        var sums = new double[width];
        var (across, down) = (Math.Min(step, scan.Width), Math.Min(step, scan.Height));
        for (var row = 0; row < height; row++)
        {
            Array.Clear(sums);
            for (var y = 0; y < down; y++)
            {
                var codes = scan.Row((row * step) + y);
                var lightOf = scan.LightOfCodes;
                var x = 0;
                for (var column = 0; column < width; column++)
                {
                    var sum = 0f;
                    for (var end = x + across; x < end; x++)
                    {
                        sum += lightOf[codes[x]];
                    }

                    sums[column] += sum;
                }
            }

            for (var column = 0; column < width; column++)
            {
                ln[(row * width) + column] = (float)Math.Log(Math.Max(Darkest, sums[column] / (across * down)));
            }
        }

        return new ReducedScan(width, height, step, ln);
    }

    /// <summary>ln of the mean light of a square.</summary>
    public float LnAt(int column, int row) => ln[(row * Width) + column];
}
