using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Quantities;

/// <summary>The contract of one quantity type, given its main factory and the number that goes in and comes out.</summary>
/// <remarks>A refusal names the unit as the value is written with it, unless told otherwise.</remarks>
/// <typeparam name="T">The quantity.</typeparam>
public sealed class QuantityContract<T>(Func<double, T> from, Func<T, double> number, string unit, string? refusedWith = null) : IQuantityContract
    where T : struct, IComparable<T>, IEquatable<T>
{
    private static readonly double Min = Constant("Min");

    private static readonly double Max = Constant("Max");

    private readonly string unitRefused = refusedWith ?? unit;

    public Type Type => typeof(T);

    public void KeepsItsRange()
    {
        Assert.Equal(Min, number(from(Min)), Math.Abs(Min) * 1e-15);
        Assert.Equal(Max, number(from(Max)), Math.Abs(Max) * 1e-15);
        foreach (var absurd in new[] { Math.BitDecrement(Min), Math.BitIncrement(Max), double.NaN, double.PositiveInfinity, double.NegativeInfinity })
        {
            var refusal = Assert.Throws<RefusalException>(() => from(absurd));
            Assert.Matches($"^The [A-Za-z -]+ is .+; it should be between .+ and .*[0-9]{Regex.Escape(unitRefused)}\\.$", refusal.Message);
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

        // Two drawn at random are never the same.
        var same = from(a);
        Assert.Equal(0, x.CompareTo(same));
        Assert.True(Compare("op_LessThanOrEqual", x, same) && Compare("op_GreaterThanOrEqual", x, same));
        Assert.False(Compare("op_LessThan", x, same) || Compare("op_GreaterThan", x, same));
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
