namespace Foramen.Architecture.Tests;

/// <summary>What only a test calls is not part of the product: each method and each property is reached from a program's start, or is kept for a reason that is named.</summary>
public class UnusedMemberTests
{
    private const string Samples = "Foramen.Architecture.Tests.Samples.Unused";

    private static readonly string[] Product =
    [
        "Foramen.Engine", "Foramen.Journal", "Foramen.Exif", "Foramen.Imaging", "Foramen.Exchange", "Foramen.Rehearsal", "Foramen.Storage", "Foramen.Field", "Foramen.Home", "foramen",
    ];

    [Fact]
    public void Each_member_is_used_or_kept_for_a_reason()
    {
        using var code = new ProductCode(AppContext.BaseDirectory, Product);
        var unused = UnusedMembers.In(code);
        Assert.Equal([], unused.Except(KeptUnused.Reasons.Keys));

        // What has come into use, or is gone, is not kept any longer.
        Assert.Equal([], KeptUnused.Reasons.Keys.Except(unused));
    }

    // By a call, a delegate, an iterator, an await, an interface, a base, a type argument and a property of a record that is read.
    [Fact]
    public void What_is_reached_by_a_detour_is_used_and_the_rest_is_named()
    {
        using var code = new ProductCode(AppContext.BaseDirectory, ["Foramen.Architecture.Tests"]);
        Assert.Equal(
            [
                "Answer.Unasked",
                "Door.Slam()",
                "Forgotten.First()",
                "Forgotten.Second()",
                "IBell.Muffle()",
                "Work.Idle()",
            ],
            UnusedMembers.In(code, $"{Samples}.Start").Where(name => name.StartsWith(Samples, StringComparison.Ordinal)).Select(name => name[(Samples.Length + 1)..]));
    }
}
