using Foramen.Engine.Learning;

namespace Foramen.Engine.Tests.Learning;

public class BeliefKeyTests
{
    private static readonly BeliefKey[] InOrder =
    [
        new(BeliefKind.Speed, "a"), new(BeliefKind.Speed, "b"), new(BeliefKind.Failure, "a"), new(BeliefKind.Camera, ""), new(BeliefKind.Flash, ""),
    ];

    // By kind, then by name in the order of its letters' numbers: a place in this list is the order itself.
    [Fact]
    public void Keys_are_ordered_by_kind_and_then_by_name()
    {
        for (var i = 0; i < InOrder.Length; i++)
        {
            for (var j = 0; j < InOrder.Length; j++)
            {
                var (one, other) = (InOrder[i], InOrder[j]);
                Assert.Equal(i.CompareTo(j), Math.Sign(one.CompareTo(other)));
                Assert.Equal(i < j, one < other);
                Assert.Equal(i <= j, one <= other);
                Assert.Equal(i > j, one > other);
                Assert.Equal(i >= j, one >= other);
                Assert.Equal(i == j, one == other);
            }
        }
    }
}
