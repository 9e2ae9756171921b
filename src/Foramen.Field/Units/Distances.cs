namespace Foramen.Field.Units;

/// <summary>Distances outdoors, kept in metres and shown in the user's units. 1 ft = 0.3048 m exactly.</summary>
public static class Distances
{
    private const double MetresPerFoot = 0.3048;

    /// <summary>The unit's sign.</summary>
    public static string Unit(UnitSystem units) => units == UnitSystem.Metric ? "m" : "ft";

    /// <summary>The number alone: two decimals below ten, one beyond.</summary>
    public static string Bare(double metres, UnitSystem units)
    {
        var value = units == UnitSystem.Metric ? metres : metres / MetresPerFoot;
        return NumberText.Show(value, Math.Abs(value) < 10 ? 2 : 1);
    }

    /// <summary>The number with its unit.</summary>
    public static string Show(double metres, UnitSystem units) => $"{Bare(metres, units)} {Unit(units)}";

    /// <summary>Metres from what was typed in the user's units.</summary>
    /// <exception cref="Engine.Quantities.RefusalException">Not a number, or outside the range.</exception>
    public static double Read(string text, double minMetres, double maxMetres, string what, UnitSystem units)
    {
        var scale = units == UnitSystem.Metric ? 1 : MetresPerFoot;
        return scale * NumberText.Read(text, minMetres / scale, maxMetres / scale, what, Unit(units));
    }
}
