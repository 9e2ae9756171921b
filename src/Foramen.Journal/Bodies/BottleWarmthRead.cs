using Foramen.Engine.Quantities;

namespace Foramen.Journal.Bodies;

/// <summary>The thermometer in a bottle was read.</summary>
public sealed record BottleWarmthRead() : BottleBody(EntryKind.BottleWarmthRead)
{
    /// <summary>What it showed, °C.</summary>
    public required double TemperatureCelsius { get; init; }

    /// <inheritdoc/>
    public override void Check()
    {
        base.Check();
        Guard.Within(TemperatureCelsius, 0, 60, "the temperature", "°C");
    }
}
