using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>How the time a bath needs depends on its temperature. Immutable.</summary>
public abstract record TemperatureLaw
{
    private protected TemperatureLaw(Temperature reference) => Reference = reference;

    /// <summary>The temperature at which the factor is one.</summary>
    public Temperature Reference { get; }

    /// <summary>The time needed at <paramref name="temperature"/> over the time needed at <see cref="Reference"/>.</summary>
    public abstract double TimeFactor(Temperature temperature);
}
