using System.Buffers.Binary;
using CsCheck;
using Foramen.Engine.Quantities;

namespace Foramen.Journal.Tests;

/// <summary>Checked against NUlid, an independent implementation of the public ULID specification.</summary>
public class UlidTests
{
    private static readonly Gen<(long Milliseconds, byte[] Chance)> GenParts =
        Gen.Select(Gen.Long[0, 253_402_300_799_999], Gen.Byte.Array[Ulid.ChanceBytes]);

    [Fact]
    [Source("nulid", Basis.Library)]
    public void Text_agrees_with_an_independent_library()
        => GenParts.Sample((milliseconds, chance) =>
        {
            var at = DateTimeOffset.FromUnixTimeMilliseconds(milliseconds);
            var bytes = new byte[16];
            BinaryPrimitives.WriteInt64BigEndian(bytes, milliseconds << 16);
            chance.CopyTo(bytes, 6);
            var theirs = new NUlid.Ulid(bytes).ToString();
            var ours = Ulid.From(at, chance);
            Assert.Equal(theirs, ours.ToString());
            Assert.Equal(milliseconds, ours.UnixMilliseconds);
            Assert.Equal(ours, Ulid.Parse(theirs));
            Assert.Equal(ours, Ulid.Parse(ours.ToString().ToLowerInvariant()));
        });

    [Fact]
    public void Order_is_the_order_of_the_text()
        => Gen.Select(GenParts, GenParts).Sample((one, other) =>
        {
            var a = Ulid.From(DateTimeOffset.FromUnixTimeMilliseconds(one.Milliseconds), one.Chance);
            var b = Ulid.From(DateTimeOffset.FromUnixTimeMilliseconds(other.Milliseconds), other.Chance);
            Assert.Equal(Math.Sign(string.CompareOrdinal(a.ToString(), b.ToString())), Math.Sign(a.CompareTo(b)));
        });

    // The example of the public ULID specification.
    [Fact]
    [Source("ulid-spec")]
    public void The_example_of_the_specification_is_read()
        => Assert.Equal(1_469_922_850_259, Ulid.Parse("01ARZ3NDEKTSV4RRFFQ69G5FAV").UnixMilliseconds);

    [Theory]
    [InlineData("")]
    [InlineData("01ARZ3NDEKTSV4RRFFQ69G5FA")]
    [InlineData("01ARZ3NDEKTSV4RRFFQ69G5FAVV")]
    [InlineData("81ARZ3NDEKTSV4RRFFQ69G5FAV")]
    [InlineData("01ARZ3NDEKTSV4RRFFQ69G5FAU")]
    [InlineData("01ARZ3NDEKTSV4RRFFQ69G5FA ")]
    [InlineData("01ARZ3NDEKTSV4RRFFQ69G5FAı")]
    public void Anything_else_is_refused(string text)
    {
        Assert.False(Ulid.TryParse(text, out _));
        Assert.Throws<RefusalException>(() => Ulid.Parse(text));
    }

    [Fact]
    public void Chance_must_be_ten_bytes_and_the_clock_after_1970()
    {
        Assert.Throws<RefusalException>(() => Ulid.From(DateTimeOffset.UnixEpoch, new byte[9]));
        Assert.Throws<RefusalException>(() => Ulid.From(DateTimeOffset.UnixEpoch.AddSeconds(-1), new byte[10]));
    }
}
