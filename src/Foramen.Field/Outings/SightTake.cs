namespace Foramen.Field.Outings;

/// <summary>Something that may be taken while sighting with the device.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="OfBearing">Whether it is a bearing; a height otherwise.</param>
/// <param name="Use">Told the degrees, whole ones.</param>
public sealed record SightTake(string Name, bool OfBearing, Action<double> Use);
