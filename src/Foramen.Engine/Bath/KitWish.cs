using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// What a day should yield and how it is processed; the defaults are common practice without a source. Immutable; each property refuses
/// what is out of its range.
/// </summary>
public sealed record KitWish
{
    private readonly int sheets;
    private readonly int? spares;
    private readonly int people = 1;
    private readonly int? washChanges;
    private readonly double topUpPart = 0.1;
    private readonly Volume covering = Volume.FromMillilitres(150);
    private readonly Volume developer = Volume.FromMillilitres(300);

    /// <summary>Pictures to be taken by each person, 1 to 1000.</summary>
    public required int Sheets
    {
        get => sheets;
        init => sheets = (int)Guard.Within(value, 1, 1000, "the number of sheets");
    }

    /// <summary>Further sheets for tests and failures, 0 to 1000; a fifth and one more where null.</summary>
    public int? Spares
    {
        get => spares;
        init => spares = value is { } given ? (int)Guard.Within(given, 0, 1000, "the number of spare sheets") : null;
    }

    /// <summary>Who share the bottles, 1 to 100.</summary>
    public int People
    {
        get => people;
        init => people = (int)Guard.Within(value, 1, 100, "the number of people");
    }

    /// <summary>Of a sheet.</summary>
    public required SheetSize Size { get; init; }

    /// <summary>What it is coated on.</summary>
    public SheetBase SheetBase { get; init; } = SheetBase.Coated;

    /// <summary>Mean density above the paper's white of the pictures to come.</summary>
    public Density MeanDensity { get; init; } = Density.FromValue(0.7);

    /// <summary>What covers a sheet in the tank, 1 ml to 100 l; also each filling of stop and fixer bottles must reach it.</summary>
    public Volume Covering
    {
        get => covering;
        init => covering = Volume.FromMillilitres(Guard.Within(value.Millilitres, 1, 100_000, "what covers a sheet", "ml"));
    }

    /// <summary>The developer bottle, 10 ml to 100 l.</summary>
    public Volume Developer
    {
        get => developer;
        init => developer = Volume.FromMillilitres(Guard.Within(value.Millilitres, 10, 100_000, "the developer", "ml"));
    }

    /// <summary>What is believed of the developer.</summary>
    public DeveloperProfile Profile { get; init; } = DeveloperProfile.Paper;

    /// <summary>Its dilution.</summary>
    public Dilution DeveloperDilution { get; init; } = Dilution.OnePlus(9);

    /// <summary>Part of the bottle renewed after each sheet, 0 to 1.</summary>
    public double TopUpPart
    {
        get => topUpPart;
        init => topUpPart = Guard.Within(value, 0, 1, "the part that is topped up");
    }

    /// <summary>Lost at each transfer.</summary>
    public Volume Lost { get; init; } = Volume.FromMillilitres(1.5);

    /// <summary>The stop bottle; null for a rinse in water after each sheet, of the volume <see cref="Covering"/>.</summary>
    public Volume? Stop { get; init; } = Volume.FromMillilitres(300);

    /// <summary>Its dilution.</summary>
    public Dilution StopDilution { get; init; } = Dilution.OnePlus(19);

    /// <summary>The fixer bottle.</summary>
    public Volume Fixer { get; init; } = Volume.FromMillilitres(300);

    /// <summary>Its dilution.</summary>
    public Dilution FixerDilution { get; init; } = Dilution.OnePlus(4);

    /// <summary>How far it is used.</summary>
    public FixerLimits FixerLimits { get; init; } = FixerLimits.FirstBath;

    /// <summary>The paper's silver.</summary>
    public SilverCoating Silver { get; init; } = SilverCoating.Usual;

    /// <summary>Changes of wash water on the spot, 1 to 100; as many as the wash plan advises where null.</summary>
    public int? WashChanges
    {
        get => washChanges;
        init => washChanges = value is { } given ? (int)Guard.Within(given, 1, 100, "the changes of wash water") : null;
    }

    /// <summary>Prices; null where cost does not matter.</summary>
    public KitPrices? Prices { get; init; }
}
