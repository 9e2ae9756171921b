namespace Foramen.Field.Device;

/// <summary>Where the device is, if its owner lets it say.</summary>
public interface IWhere
{
    /// <summary>Latitude and longitude, degrees, north and east positive; null where it is refused or unknown.</summary>
    Task<(double Latitude, double Longitude)?> AskAsync();
}
