using Foramen.Journal.Bodies;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Fold;

public class PackedKitTests
{
    private static readonly Ulid Kit = Id(40_000);

    [Fact]
    public void Lines_are_checked_off_and_taken_out_again()
    {
        var kit = Of(List, new KitPacked { Kit = Kit, Line = 0, Packed = true }, new KitPacked { Kit = Kit, Line = 1, Packed = true }, new KitPacked { Kit = Kit, Line = 0, Packed = false });
        Assert.Equal([1], kit.Packed);
        Assert.Equal(1, kit.Left);
    }

    [Fact]
    public void Planned_again_nothing_is_packed()
        => Assert.Equal(2, Of(List, new KitPacked { Kit = Kit, Line = 0, Packed = true }, List).Left);

    private static KitPlanned List => new() { Kit = Kit, Name = "day", Lines = ["paper", "gloves"] };

    private static PackedKit Of(params EntryBody[] bodies)
        => Ledger.Of(EntrySet.Of(Phoned([.. bodies.Select((body, i) => ((double)i, body))]))).Kits.Find(Kit)!;
}
