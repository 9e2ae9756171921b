using System.Globalization;
using CsCheck;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Quantities;

/// <summary>The contract of one quantity type, given its main factory and the number that goes in and comes out.</summary>
/// <typeparam name="T">The quantity.</typeparam>
public sealed class QuantityContract<T>(Func<double, T> from, Func<T, double> number, string unit) : IQuantityContract
    where T : struct, IComparable<T>, IEquatable<T>
{
    private static readonly double Min = Constant("Min");

    private static readonly double Max = Constant("Max");

    public Type Type => typeof(T);

    public void KeepsItsRange()
    {
        Assert.Equal(Min, number(from(Min)), Math.Abs(Min) * 1e-15);
        Assert.Equal(Max, number(from(Max)), Math.Abs(Max) * 1e-15);
        foreach (var absurd in new[] { Math.BitDecrement(Min), Math.BitIncrement(Max), double.NaN, double.PositiveInfinity, double.NegativeInfinity })
        {
            var refusal = Assert.Throws<RefusalException>(() => from(absurd));
            Assert.EndsWith(".", refusal.Message, StringComparison.Ordinal);
        }

        Gen.Double.Sample(any =>
        {
            try
            {
                Assert.InRange(number(from(any)), Min, Max);
            }
            catch (RefusalException)
            {
                Assert.False(any >= Min && any <= Max);
            }
        });
    }

    public void IsOrderedByItsNumber() => Gen.Select(Gen.Double[Min, Max], Gen.Double[Min, Max]).Sample((a, b) =>
    {
        var (x, y) = (from(a), from(b));
        Assert.Equal(Math.Sign(number(x).CompareTo(number(y))), Math.Sign(x.CompareTo(y)));
        Assert.Equal(number(x) < number(y), Compare("op_LessThan", x, y));
        Assert.Equal(number(x) <= number(y), Compare("op_LessThanOrEqual", x, y));
        Assert.Equal(number(x) > number(y), Compare("op_GreaterThan", x, y));
        Assert.Equal(number(x) >= number(y), Compare("op_GreaterThanOrEqual", x, y));
        Assert.Equal(x, from(a));
        Assert.Equal(x.GetHashCode(), from(a).GetHashCode());
        Assert.Equal(number(x).Equals(number(y)), x.Equals(y));
    });

    public void IsWrittenWithItsUnit()
    {
        var text = from(Math.Clamp(1, Min, Max)).ToString()!;
        Assert.EndsWith(unit, text, StringComparison.Ordinal);
        Assert.Equal(text.Trim(), text);
        Assert.Contains(text, char.IsAsciiDigit);
    }

    public override string ToString() => typeof(T).Name;

    private static double Constant(string name)
        => Convert.ToDouble(typeof(T).GetField(name)!.GetRawConstantValue(), CultureInfo.InvariantCulture);

    private static bool Compare(string operation, T left, T right) => (bool)typeof(T).GetMethod(operation)!.Invoke(null, [left, right])!;
}
