using Foramen.Engine.Quantities;

namespace Foramen.Engine.Light;

/// <summary>
/// Light on level ground from sun and clear sky as published for the whole day and the night: P. M. Janiczek and J. A. DeYoung, Computer Programs for
/// Sun and Moon Illuminance, US Naval Observatory Circular 171 (1987), lg E as cubics of h/90° (coefficients from memory, found to join at the ends
/// of their pieces). Used for what is below the horizon; from 18° below, airglow and stars as at 18°.
/// </summary>
/// <remarks>Clear air at sea level; weather changes it by a stop or two, the western and the eastern sky differ by more.</remarks>
public static class Twilight
{
    private static readonly (double From, double C0, double C1, double C2, double C3)[] Pieces =
    [
        (20, 3.74, 3.97, -4.07, 1.47),
        (5, 3.05, 13.28, -45.98, 64.33),
        (-0.8, 2.88, 22.26, -207.64, 1034.30),
        (-5, 2.88, 21.81, -258.11, -858.36),
        (-12, 2.70, 12.17, -431.69, -1899.83),
        (-18, 13.84, 262.72, 1447.42, 2797.93),
    ];

    /// <summary>Light on level ground from the sun and a clear sky.</summary>
    /// <param name="trueElevation">Of the sun, without air, −90° to 90°.</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static Illuminance ClearHorizontal(Angle trueElevation)
        => Illuminance.FromLux(LuxAt(Guard.Within(trueElevation.Degrees, -90, 90, "the sun's elevation", "°")));

    /// <summary>Light at one elevation over that at another, degrees.</summary>
    internal static double Between(double from, double to) => LuxAt(to) / LuxAt(from);

    private static double LuxAt(double degrees)
    {
        var h = Math.Max(-18, degrees);
        var piece = Pieces[^1];
        foreach (var one in Pieces)
        {
            if (h >= one.From)
            {
                piece = one;
                break;
            }
        }

        var x = h / 90;
        return Math.Pow(10, piece.C0 + (x * (piece.C1 + (x * (piece.C2 + (x * piece.C3))))));
    }
}
