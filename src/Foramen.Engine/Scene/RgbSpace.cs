namespace Foramen.Engine.Scene;

/// <summary>
/// What an RGB space's primaries make of linear light. Primaries: sRGB IEC 61966-2-1; Display P3 SMPTE EG 432-1 with D65 white. The matrices
/// follow from them and white by the usual derivation (SMPTE RP 177).
/// </summary>
public static class RgbSpace
{
    private static readonly double[,] SrgbToXyz = FromPrimaries(0.64, 0.33, 0.30, 0.60, 0.15, 0.06);

    private static readonly double[,] P3ToXyz = FromPrimaries(0.680, 0.320, 0.265, 0.690, 0.150, 0.060);

    private static readonly double[,] P3ToSrgb = Multiply(Inverse(SrgbToXyz), P3ToXyz);

    /// <summary>Linear RGB of a space to CIE XYZ with Y 1 for white; rows X, Y, Z.</summary>
    public static double[,] ToXyz(PhotographColour colour) => (double[,])(colour == PhotographColour.DisplayP3 ? P3ToXyz : SrgbToXyz).Clone();

    /// <summary>Linear RGB of a space to linear sRGB. Colours outside sRGB come out below 0 or above 1.</summary>
    public static (double Red, double Green, double Blue) ToLinearSrgb(PhotographColour colour, double red, double green, double blue)
        => colour == PhotographColour.DisplayP3
            ? (Dot(P3ToSrgb, 0, red, green, blue), Dot(P3ToSrgb, 1, red, green, blue), Dot(P3ToSrgb, 2, red, green, blue))
            : (red, green, blue);

    /// <summary>Weights meant for linear sRGB, restated for linear RGB of a space.</summary>
    internal static (double Red, double Green, double Blue) WeightsIn(PhotographColour colour, double red, double green, double blue)
    {
        if (colour != PhotographColour.DisplayP3)
        {
            return (red, green, blue);
        }

        double For(int column) => (red * P3ToSrgb[0, column]) + (green * P3ToSrgb[1, column]) + (blue * P3ToSrgb[2, column]);
        return (For(0), For(1), For(2));
    }

    private static double[,] FromPrimaries(double redX, double redY, double greenX, double greenY, double blueX, double blueY)
    {
        const double WhiteX = 0.3127, WhiteY = 0.3290;
        var primaries = new[,]
        {
            { redX / redY, greenX / greenY, blueX / blueY },
            { 1, 1, 1 },
            { (1 - redX - redY) / redY, (1 - greenX - greenY) / greenY, (1 - blueX - blueY) / blueY },
        };
        var inverse = Inverse(primaries);
        var scaled = new double[3, 3];
        for (var column = 0; column < 3; column++)
        {
            var scale = Dot(inverse, column, WhiteX / WhiteY, 1, (1 - WhiteX - WhiteY) / WhiteY);
            for (var row = 0; row < 3; row++)
            {
                scaled[row, column] = primaries[row, column] * scale;
            }
        }

        return scaled;
    }

    private static double Dot(double[,] matrix, int row, double a, double b, double c)
        => (matrix[row, 0] * a) + (matrix[row, 1] * b) + (matrix[row, 2] * c);

    private static double[,] Multiply(double[,] left, double[,] right)
    {
        var product = new double[3, 3];
        for (var row = 0; row < 3; row++)
        {
            for (var column = 0; column < 3; column++)
            {
                product[row, column] = Dot(left, row, right[0, column], right[1, column], right[2, column]);
            }
        }

        return product;
    }

    private static double[,] Inverse(double[,] m)
    {
        var inverse = new double[3, 3];
        var determinant = 0.0;
        for (var row = 0; row < 3; row++)
        {
            var (r1, r2) = ((row + 1) % 3, (row + 2) % 3);
            determinant += m[row, 0] * ((m[r1, 1] * m[r2, 2]) - (m[r1, 2] * m[r2, 1]));
            for (var column = 0; column < 3; column++)
            {
                var (c1, c2) = ((column + 1) % 3, (column + 2) % 3);
                inverse[column, row] = (m[r1, c1] * m[r2, c2]) - (m[r1, c2] * m[r2, c1]);
            }
        }

        for (var i = 0; i < 9; i++)
        {
            inverse[i / 3, i % 3] /= determinant;
        }

        return inverse;
    }
}
