using System.Text.Json.Serialization;
using Foramen.Field.Units;

namespace Foramen.Field.Settings;

/// <summary>What the user has chosen on this device; not part of the journal.</summary>
public sealed record UserSettings
{
    /// <summary>The look; null until chosen, and then the device's own wish counts.</summary>
    public Theme? Theme { get; init; }

    /// <summary>Units.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>Whether timers may be heard.</summary>
    public bool Sound { get; init; } = true;

    /// <summary>Whether timers may be felt.</summary>
    public bool Vibration { get; init; } = true;
}

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, UseStringEnumConverter = true)]
[JsonSerializable(typeof(UserSettings))]
internal sealed partial class SettingsJson : JsonSerializerContext;
