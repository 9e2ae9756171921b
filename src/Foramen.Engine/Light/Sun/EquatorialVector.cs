namespace Foramen.Engine.Light;

/// <summary>
/// A place in space from the Earth's middle, along the true equator and equinox of date: X to the equinox, Z to the north pole. Kilometres.
/// </summary>
internal readonly record struct EquatorialVector(double X, double Y, double Z)
{
    /// <summary>Distance from the Earth's middle, km.</summary>
    public double Distance => Math.Sqrt((X * X) + (Y * Y) + (Z * Z));

    /// <summary>Right ascension, radians, −π to π.</summary>
    public double RightAscension => Math.Atan2(Y, X);

    /// <summary>Declination, radians.</summary>
    public double Declination => Math.Atan2(Z, Math.Sqrt((X * X) + (Y * Y)));
}
