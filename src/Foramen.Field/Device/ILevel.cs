namespace Foramen.Field.Device;

/// <summary>The device's orientation sensor.</summary>
public interface ILevel
{
    /// <summary>Starts; call from a touch, since some browsers ask for permission.</summary>
    /// <param name="onReading">Called about ten times a second.</param>
    Task<LevelState> StartAsync(Action<LevelReading> onReading);

    /// <summary>Stops.</summary>
    void Stop();
}
