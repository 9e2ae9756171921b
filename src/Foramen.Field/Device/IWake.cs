namespace Foramen.Field.Device;

/// <summary>Keeps the screen awake while something runs.</summary>
public interface IWake
{
    /// <summary>What came of the last wish.</summary>
    WakeState State { get; }

    /// <summary>The state has changed.</summary>
    event Action? Changed;

    /// <summary>Keep it awake from now on.</summary>
    Task HoldAsync();

    /// <summary>No longer needed.</summary>
    Task ReleaseAsync();
}
