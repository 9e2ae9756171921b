using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Kit;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Bottles;

/// <summary>
/// A bottle that can be reckoned by hand: 300 ml, sheets of 100 × 100 mm, nothing lost with time. At 2/3 m²/l a sheet of the reference density 0.7 takes
/// e = 0.01/(2/3 · 0.3) = 0.05 of it.
/// </summary>
internal static class BottleExamples
{
    public static readonly Ulid BottleId = Id(30_001);
    public static readonly Ulid CameraId = Id(30_002);

    public static DeveloperDefinition Ageless { get; } = new()
    {
        TimeSeconds = 75, CapacitySquareMetresPerLitre = 2.0 / 3, OpenLossPerHour = 0, ClosedLossPerDay = 0,
    };

    public static BottleMixed Mixed { get; } = new()
    {
        Bottle = BottleId, Contents = BottleContents.Developer, Name = "little bottle", VolumeMillilitres = 300, CoveringMillilitres = 100, Developer = Ageless, TemperatureCelsius = 20,
    };

    public static CameraDefined Square { get; } = new()
    {
        Camera = CameraId,
        Definition = new CameraDefinition
        {
            Name = "square", HoleDiameterMillimetres = 0.3, FocalDistanceMillimetres = 60, SheetWidthMillimetres = 100, SheetHeightMillimetres = 100,
        },
    };

    /// <summary>A sheet of 100 × 100 mm and mean density 0.7, of which nothing is lost.</summary>
    public static IEnumerable<EntryBody> Through(int number, double? density = 0.7, double lost = 0) =>
    [
        new SheetStarted { Sheet = Id(31_000 + number), Camera = CameraId },
        new DevelopedIn { Sheet = Id(31_000 + number), Bottle = BottleId, TemperatureCelsius = 20, MeanDensity = density, LostMillilitres = lost },
    ];

    public static BottleToppedUp ToppedUp(double poured, double fresh) => new() { Bottle = BottleId, PouredMillilitres = poured, FreshMillilitres = fresh };

    /// <summary>What a phone wrote, an entry a minute from noon on.</summary>
    public static Ledger Folded(params IEnumerable<EntryBody> bodies)
        => Ledger.Of(EntrySet.Of(Phoned([.. bodies.Select((body, i) => (60.0 * i, body))])));

    public static DeveloperAccount Account(params IEnumerable<EntryBody> bodies) => AccountAt(Noon.AddDays(1), bodies);

    public static DeveloperAccount AccountAt(DateTimeOffset at, params IEnumerable<EntryBody> bodies)
    {
        var ledger = Folded(bodies);
        return DeveloperAccount.Of(ledger, ledger.Bottles.Find(BottleId)!, at);
    }
}
