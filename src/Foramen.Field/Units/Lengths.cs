namespace Foramen.Field.Units;

/// <summary>Lengths of gear, kept in millimetres and shown in the user's units. 1 in = 25.4 mm exactly.</summary>
public static class Lengths
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>The unit's sign.</summary>
    public static string Unit(UnitSystem units) => units == UnitSystem.Metric ? "mm" : "in";

    /// <summary>The number alone.</summary>
    public static string Bare(double millimetres, UnitSystem units)
        => units == UnitSystem.Metric ? NumberText.Show(millimetres) : NumberText.Show(millimetres / MillimetresPerInch, 3);

    /// <summary>The number with its unit.</summary>
    public static string Show(double millimetres, UnitSystem units) => $"{Bare(millimetres, units)} {Unit(units)}";

    /// <summary>Millimetres from what was typed in the user's units.</summary>
    public static double Read(string text, double minMillimetres, double maxMillimetres, string what, UnitSystem units)
    {
        var scale = units == UnitSystem.Metric ? 1 : MillimetresPerInch;
        return scale * NumberText.Read(text, minMillimetres / scale, maxMillimetres / scale, what, Unit(units));
    }
}
