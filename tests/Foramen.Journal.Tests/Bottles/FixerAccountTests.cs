using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Kit;
using static Foramen.Journal.Tests.Bottles.BottleExamples;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Bottles;

public class FixerAccountTests
{
    private static readonly BottleMixed Fixer = Mixed with { Contents = BottleContents.Fixer, Developer = null, VolumeMillilitres = 500 };

    [Fact]
    public void Silver_and_area_of_its_sheets_add_up()
    {
        // Ten sheets of 0.01 m² in half a litre: 0.2 m²/l; 1.4 g/m² of silver, of which a mean density of 0.7 under a black of 2 keeps 0.35 back: 0.182 g/l.
        var ledger = Folded([Square, Fixer, .. Enumerable.Range(0, 10).SelectMany(FixedSheet)]);
        var account = FixerAccount.Of(ledger, ledger.Bottles.Find(BottleId)!);
        Assert.Equal(0.2, account.Now.SquareMetresPerLitre, 1e-9);
        Assert.Equal(0.182, account.Now.SilverGramsPerLitre, 1e-9);
        // 2 g/l of silver at 0.0182 g/l a sheet are 109 sheets in all, 2.73 m²/l at 0.02 are 136.
        Assert.Equal(109 - 10, account.SheetsLeft);
    }

    [Fact]
    public void Topping_up_takes_its_part_of_the_silver()
    {
        var ledger = Folded([Square, Fixer, .. FixedSheet(1), new BottleToppedUp { Bottle = BottleId, PouredMillilitres = 250, FreshMillilitres = 250 }]);
        Assert.Equal(0.0091, FixerAccount.Of(ledger, ledger.Bottles.Find(BottleId)!).Now.SilverGramsPerLitre, 1e-9);
    }

    [Fact]
    public void A_bottle_of_developer_fixes_nothing()
    {
        var ledger = Folded([Mixed]);
        Assert.Throws<RefusalException>(() => FixerAccount.Of(ledger, ledger.Bottles.Find(BottleId)!));
        Assert.Throws<RefusalException>(() => new FixerDefinition { Kind = "salt" }.ToKind());
    }

    private static IEnumerable<EntryBody> FixedSheet(int number) =>
        [new SheetStarted { Sheet = Id(33_000 + number), Camera = CameraId }, new FixedIn { Sheet = Id(33_000 + number), Bottle = BottleId }];
}
