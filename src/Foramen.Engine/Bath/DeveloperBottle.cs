using System.Globalization;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// One bottle of developer after all that has happened to it. Volume is conserved: what was filled in and added is in the bottle, was lost
/// at transfers, or was poured away. Activity is 1 for fresh developer. Air in a half-empty bottle is not counted. Immutable.
/// </summary>
public sealed record DeveloperBottle
{
    // A time of appearance of some 8 to 12 s is read to a second, and the factor is known to a tenth: together about a fifth.
    private const double AppearanceUncertainty = 1.2;

    private DeveloperBottle()
    {
    }

    /// <summary>What is believed of the developer in it.</summary>
    public required DeveloperProfile Profile { get; init; }

    /// <summary>What the bottle, or the tank, holds when full.</summary>
    public required Volume Capacity { get; init; }

    /// <summary>What it takes to cover a sheet.</summary>
    public required Volume Covering { get; init; }

    /// <summary>What is in it now.</summary>
    public required Volume Volume { get; init; }

    /// <summary>Activity now, 1 for fresh: between the additive model at the low capacity and the multiplicative one at the high.</summary>
    public Spread<double> Activity => Strength.Activity;

    /// <summary>Activity by the additive model at the middle capacity.</summary>
    public double AdditiveActivity => Strength.Additive;

    /// <summary>Activity by the multiplicative model at the middle capacity.</summary>
    public double MultiplicativeActivity => Strength.Multiplicative;

    /// <summary>By-products: area of sheets of the profile's reference density whose by-products are in each litre, m²/l.</summary>
    public double ByProductsSquareMetresPerLitre { get; private init; }

    /// <summary>Sheets developed.</summary>
    public int Sheets { get; private init; }

    /// <summary>Area developed.</summary>
    public Area AreaDeveloped { get; private init; }

    /// <summary>Area times mean density of all sheets, m².</summary>
    public double DensityAreaSquareMetres { get; private init; }

    /// <summary>Time since it was filled.</summary>
    public Duration Age { get; private init; }

    /// <summary>Put in at the start.</summary>
    public required Volume Filled { get; init; }

    /// <summary>Added since.</summary>
    public Volume Added { get; private init; }

    /// <summary>Lost at transfers.</summary>
    public Volume Lost { get; private init; }

    /// <summary>Poured to waste.</summary>
    public Volume Poured { get; private init; }

    private BottleStrength Strength { get; init; } = BottleStrength.Fresh;

    /// <summary>A bottle filled with fresh developer at working strength.</summary>
    /// <param name="profile">The developer.</param>
    /// <param name="volume">10 ml to 100 l.</param>
    /// <param name="covering">What it takes to cover a sheet, in the tank that is used.</param>
    /// <param name="capacity">What the bottle holds; <paramref name="volume"/> where null.</param>
    /// <exception cref="RefusalException">Out of range, more than the bottle holds, or too little to cover one sheet.</exception>
    public static DeveloperBottle Fill(DeveloperProfile profile, Volume volume, Volume covering, Volume? capacity = null)
    {
        Guard.Within(volume.Millilitres, 10, 100_000, "the developer", "ml");
        var holds = capacity ?? volume;
        if (volume > holds)
        {
            throw new RefusalException(Text($"{volume.Millilitres:0.#} ml do not fit in a bottle of {holds.Millilitres:0.#} ml."));
        }

        var bottle = new DeveloperBottle { Profile = profile, Capacity = holds, Covering = covering, Volume = volume, Filled = volume };
        return bottle.Covered();
    }

    /// <summary>The bottle after these events, in this order.</summary>
    /// <exception cref="RefusalException">An event that cannot have happened.</exception>
    public DeveloperBottle After(IEnumerable<BottleEvent> events) => events.Aggregate(this, (bottle, each) => bottle.After(each));

    /// <summary>The bottle after one event.</summary>
    /// <exception cref="RefusalException">An event that cannot have happened.</exception>
    public DeveloperBottle After(BottleEvent happened) => happened switch
    {
        SheetDeveloped sheet => AfterSheet(sheet),
        FreshAdded fresh => AfterFresh(fresh),
        PouredAway poured => this with
        {
            Volume = Less(poured.Volume, "poured away"),
            Poured = Sum(Poured, poured.Volume),
        },
        TimePassed rest => AfterRest(rest),
        ImageAppeared seen => this with
        {
            Strength = Strength.Seen(
                Math.Min(1, FactorialDevelopment.ActivityShown(Profile, seen.Temperature, seen.Appearance)), AppearanceUncertainty),
        },
        _ => throw new ArgumentOutOfRangeException(nameof(happened)),
    };

    /// <summary>The time for the next sheet.</summary>
    /// <param name="temperature">Of the developer, now.</param>
    /// <exception cref="RefusalException">Outside 10 to 32 °C, too weak for any time, or too little to cover a sheet.</exception>
    public DevelopmentTime TimeAt(Temperature temperature) => DevelopmentTime.For(Profile, temperature, Covered().Activity);

    /// <summary>Part of the whole bottle that a sheet would take at the low, middle and high capacity.</summary>
    public Spread<double> ExhaustionBy(Area area, Density meanDensity)
    {
        var litres = Math.Max(Volume.Litres, 1e-6);
        var capacity = Profile.CapacitySquareMetresPerLitre;
        return new(At(capacity.Low), At(capacity.Middle), At(capacity.High));

        double At(double squareMetresPerLitre) => Profile.LitresSpent(area, meanDensity, squareMetresPerLitre) / litres;
    }

    private static string Text(FormattableString sentence) => sentence.ToString(CultureInfo.InvariantCulture);

    private static Volume Sum(Volume a, Volume b) => Volume.FromMillilitres(a.Millilitres + b.Millilitres);

    private DeveloperBottle AfterSheet(SheetDeveloped sheet)
    {
        Covered();
        var squareMetres = sheet.Area.SquareMetres;
        return this with
        {
            Volume = Less(sheet.Lost, "lost at the transfer"),
            Lost = Sum(Lost, sheet.Lost),
            Strength = Strength.AfterSheet(ExhaustionBy(sheet.Area, sheet.MeanDensity)),
            ByProductsSquareMetresPerLitre = ByProductsSquareMetresPerLitre
                + (squareMetres * sheet.MeanDensity.Value / Profile.ReferenceDensity.Value / Volume.Litres),
            Sheets = Sheets + 1,
            AreaDeveloped = Area.FromSquareMetres(AreaDeveloped.SquareMetres + squareMetres),
            DensityAreaSquareMetres = DensityAreaSquareMetres + (squareMetres * sheet.MeanDensity.Value),
        };
    }

    private DeveloperBottle AfterFresh(FreshAdded fresh)
    {
        Guard.Within(fresh.Strength, 0, 1.5, "the strength of what was added");
        var total = Volume.Millilitres + fresh.Volume.Millilitres;

        // A hundredth of a millilitre is rounding, not an overflow.
        var over = total - Capacity.Millilitres;
        if (over > 0.01)
        {
            throw new RefusalException(Text(
                $"The bottle holds {Capacity.Millilitres:0.#} ml and has {Volume.Millilitres:0.#} ml in it; pour {over:0.#} ml to waste before adding {fresh.Volume.Millilitres:0.#} ml."));
        }

        if (total <= 0)
        {
            return this;
        }

        var part = fresh.Volume.Millilitres / total;
        return this with
        {
            Volume = Volume.FromMillilitres(total),
            Added = Sum(Added, fresh.Volume),
            Strength = Strength.MixedWith(part, fresh.Strength),
            ByProductsSquareMetresPerLitre = ByProductsSquareMetresPerLitre * (1 - part),
        };
    }

    private DeveloperBottle AfterRest(TimePassed rest)
    {
        var hours = rest.Time.Seconds / 3600;
        var loss = rest.Open ? Profile.OpenLossPerHour * hours : Profile.ClosedLossPerDay * hours / 24;
        return this with
        {
            Age = Duration.FromSeconds(Math.Min(Age.Seconds + rest.Time.Seconds, Duration.Max)),
            Strength = Strength.Weakened(Math.Exp(-loss / Profile.Temperatures.Middle.TimeFactor(rest.Temperature)), Profile.AgeingFactor),
        };
    }

    private DeveloperBottle Covered() => Volume >= Covering
        ? this
        : throw new RefusalException(Text(
            $"Only {Volume.Millilitres:0.#} ml are in the bottle and {Covering.Millilitres:0.#} ml are needed to cover the sheet; top it up first."));

    private Volume Less(Volume volume, string where) => volume <= Volume
        ? Volume.FromMillilitres(Volume.Millilitres - volume.Millilitres)
        : throw new RefusalException(Text(
            $"{volume.Millilitres:0.#} ml cannot have been {where} from a bottle with {Volume.Millilitres:0.#} ml in it."));
}
