using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using MathNet.Numerics.LinearAlgebra;

namespace Foramen.Engine.Print;

/// <summary>
/// From places on something flat (u to the right, v downwards, 0 to 1 each) to pixels of a picture of it, however it lay: the projective map through four corner marks
/// (any textbook of projective geometry; eight linear equations for its eight numbers). Immutable.
/// </summary>
public sealed class Homography
{
    private readonly double[] h;

    private Homography(double[] numbers) => h = numbers;

    /// <summary>The map through four corners, named as the thing is looked at the right way up.</summary>
    /// <param name="topLeft">Pixel of u 0, v 0.</param>
    /// <param name="topRight">Of u 1, v 0.</param>
    /// <param name="bottomRight">Of u 1, v 1.</param>
    /// <param name="bottomLeft">Of u 0, v 1.</param>
    /// <exception cref="RefusalException">The corners make no four-sided figure, or run the wrong way round.</exception>
    public static Homography Through(PixelPoint topLeft, PixelPoint topRight, PixelPoint bottomRight, PixelPoint bottomLeft)
        => Through([(topLeft.X, topLeft.Y), (topRight.X, topRight.Y), (bottomRight.X, bottomRight.Y), (bottomLeft.X, bottomLeft.Y)]);

    /// <summary>The same for corners that may lie beside the picture; clockwise from the upper left.</summary>
    /// <exception cref="RefusalException">As above.</exception>
    internal static Homography Through(IReadOnlyList<(double X, double Y)> corners)
    {
        RefuseFolded(corners);
        double[] us = [0, 1, 1, 0];
        double[] vs = [0, 0, 1, 1];
        var equations = Matrix<double>.Build.Dense(8, 8);
        var right = Vector<double>.Build.Dense(8);
        for (var i = 0; i < 4; i++)
        {
            var (u, v, x, y) = (us[i], vs[i], corners[i].X, corners[i].Y);
            equations.SetRow(2 * i, [u, v, 1, 0, 0, 0, -u * x, -v * x]);
            equations.SetRow((2 * i) + 1, [0, 0, 0, u, v, 1, -u * y, -v * y]);
            (right[2 * i], right[(2 * i) + 1]) = (x, y);
        }

        return new Homography([.. equations.Solve(right), 1]);
    }

    /// <summary>The pixel of a place.</summary>
    /// <param name="u">From the left, 0 to 1.</param>
    /// <param name="v">From the top, 0 to 1.</param>
    public (double X, double Y) Map(double u, double v)
    {
        var w = (h[6] * u) + (h[7] * v) + h[8];
        return (((h[0] * u) + (h[1] * v) + h[2]) / w, ((h[3] * u) + (h[4] * v) + h[5]) / w);
    }

    /// <summary>The map along one line of places, v from the top: x = (Ax u + Bx)/(Aw u + Bw) and y alike.</summary>
    internal (double Ax, double Bx, double Ay, double By, double Aw, double Bw) Along(double v)
        => (h[0], (h[1] * v) + h[2], h[3], (h[4] * v) + h[5], h[6], (h[7] * v) + h[8]);

    /// <summary>The place of a pixel, which may lie beyond the marks: the inverse map, by the matrix of cofactors.</summary>
    /// <exception cref="RefusalException">The pixel lies on the horizon of the plane or beyond it.</exception>
    public (double U, double V) PlaceOf(PixelPoint pixel)
    {
        var (x, y) = (pixel.X, pixel.Y);
        var u = (((h[4] * h[8]) - (h[5] * h[7])) * x) + (((h[2] * h[7]) - (h[1] * h[8])) * y) + ((h[1] * h[5]) - (h[2] * h[4]));
        var v = (((h[5] * h[6]) - (h[3] * h[8])) * x) + (((h[0] * h[8]) - (h[2] * h[6])) * y) + ((h[2] * h[3]) - (h[0] * h[5]));
        var w = (((h[3] * h[7]) - (h[4] * h[6])) * x) + (((h[1] * h[6]) - (h[0] * h[7])) * y) + ((h[0] * h[4]) - (h[1] * h[3]));
        var determinant = (h[0] * ((h[4] * h[8]) - (h[5] * h[7]))) - (h[1] * ((h[3] * h[8]) - (h[5] * h[6]))) + (h[2] * ((h[3] * h[7]) - (h[4] * h[6])));

        // The map's own w at the place is determinant/w; it is positive on the side of the horizon where the marks lie.
        return determinant / w > 1e-6
            ? (u / w, v / w)
            : throw new RefusalException("A touched place lies beyond the horizon of the plane that the corner marks span; touch one nearer to the strip.");
    }

    /// <summary>The inverse map along one row of pixels: u = (Ux·x + U1)/(Wx·x + W1) and v alike.</summary>
    internal (double Ux, double U1, double Vx, double V1, double Wx, double W1) PlacesAlong(double y) => (
        (h[4] * h[8]) - (h[5] * h[7]),
        (((h[2] * h[7]) - (h[1] * h[8])) * y) + ((h[1] * h[5]) - (h[2] * h[4])),
        (h[5] * h[6]) - (h[3] * h[8]),
        (((h[0] * h[8]) - (h[2] * h[6])) * y) + ((h[2] * h[3]) - (h[0] * h[5])),
        (h[3] * h[7]) - (h[4] * h[6]),
        (((h[1] * h[6]) - (h[0] * h[7])) * y) + ((h[0] * h[4]) - (h[1] * h[3])));

    // With rows counted downwards, corners named clockwise turn to the right at each of them.
    private static void RefuseFolded(IReadOnlyList<(double X, double Y)> corners)
    {
        var (right, left) = (0, 0);
        for (var i = 0; i < 4; i++)
        {
            var (a, b, c) = (corners[i], corners[(i + 1) % 4], corners[(i + 2) % 4]);
            var turn = ((b.X - a.X) * (c.Y - b.Y)) - ((b.Y - a.Y) * (c.X - b.X));
            right += turn > 1 ? 1 : 0;
            left += turn < -1 ? 1 : 0;
        }

        if (left == 4)
        {
            throw new RefusalException("The corner marks run the wrong way round, so the scan is mirrored or two marks are exchanged; name them top left, top right, bottom right, bottom left.");
        }

        if (right != 4)
        {
            throw new RefusalException("The corner marks make no four-sided figure; name the four corners in the order top left, top right, bottom right, bottom left.");
        }
    }
}
