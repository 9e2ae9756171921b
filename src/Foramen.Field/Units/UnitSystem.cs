namespace Foramen.Field.Units;

/// <summary>How lengths and temperatures are written and read.</summary>
public enum UnitSystem
{
    /// <summary>Metres, millimetres, °C.</summary>
    Metric,

    /// <summary>Feet, inches, °F.</summary>
    Imperial,
}
