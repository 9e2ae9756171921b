using System.Text.Json;
using Foramen.Field.Device;

namespace Foramen.Field.Settings;

/// <summary>Reads and keeps the settings.</summary>
public sealed class SettingsKeeper
{
    private readonly IPlatform platform;

    /// <summary>Reads what is kept; damaged settings count as none.</summary>
    public SettingsKeeper(IPlatform platform)
    {
        this.platform = platform;
        try
        {
            Current = platform.ReadSettings() is { Length: > 0 } json
                ? JsonSerializer.Deserialize(json, SettingsJson.Default.UserSettings) ?? new UserSettings()
                : new UserSettings();
        }
        catch (JsonException)
        {
            Current = new UserSettings();
        }
    }

    /// <summary>The settings now.</summary>
    public UserSettings Current { get; private set; }

    /// <summary>Whether they will outlast this page.</summary>
    public bool AreKept { get; private set; } = true;

    /// <summary>They have changed.</summary>
    public event Action? Changed;

    /// <summary>Takes new settings.</summary>
    public void Set(UserSettings settings)
    {
        Current = settings;
        AreKept = platform.WriteSettings(JsonSerializer.Serialize(settings, SettingsJson.Default.UserSettings));
        if (settings.Theme is { } theme)
        {
            platform.ShowTheme(NameOf(theme));
        }

        Changed?.Invoke();
    }

    /// <summary>The theme's name in the style sheet.</summary>
    public static string NameOf(Theme theme) => theme switch
    {
        Theme.Night => "night",
        Theme.Red => "red",
        _ => "paper",
    };
}
