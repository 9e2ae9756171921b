namespace Foramen.Engine.Tests.Quantities;

/// <summary>What every quantity promises, whatever its type.</summary>
public interface IQuantityContract
{
    /// <summary>The quantity's type.</summary>
    Type Type { get; }

    /// <summary>Asserts that the ends of the range are taken, all beyond refused, and NaN and infinities too.</summary>
    void KeepsItsRange();

    /// <summary>Asserts that order, equality and hash follow the number.</summary>
    void IsOrderedByItsNumber();

    /// <summary>Asserts that it is written with its unit.</summary>
    void IsWrittenWithItsUnit();
}
