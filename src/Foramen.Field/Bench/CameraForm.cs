using Foramen.Field.Components;
using Foramen.Field.Texts;
using Foramen.Field.Units;
using Foramen.Journal.Kit;

namespace Foramen.Field.Bench;

/// <summary>A camera as it is typed in: texts until they are read, a message beside each that cannot be.</summary>
public sealed class CameraForm(UnitSystem units)
{
    private CameraDefinition? from;

    /// <summary>The name.</summary>
    public string Name { get; set; } = "";

    /// <summary>The hole's diameter.</summary>
    public string Hole { get; set; } = "";

    /// <summary>From the hole to the paper.</summary>
    public string Focal { get; set; } = "";

    /// <summary>The sheet's width as it lies level.</summary>
    public string Width { get; set; } = "";

    /// <summary>The sheet's height.</summary>
    public string Height { get; set; } = "";

    /// <summary>The radius of the wall that curved paper lies on.</summary>
    public string WallRadius { get; set; } = "";

    /// <summary>Whether the paper lies curved.</summary>
    public bool Curved { get; set; }

    /// <summary>What is wrong, by field.</summary>
    public Dictionary<string, string> Messages { get; } = [];

    /// <summary>Fills the form from a camera; what the form does not show is kept.</summary>
    public CameraForm Fill(CameraDefinition camera)
    {
        from = camera;
        Name = camera.Name;
        Hole = Lengths.Bare(camera.HoleDiameterMillimetres, units);
        Focal = Lengths.Bare(camera.FocalDistanceMillimetres, units);
        Width = Lengths.Bare(camera.SheetWidthMillimetres, units);
        Height = Lengths.Bare(camera.SheetHeightMillimetres, units);
        Curved = camera.PaperShape == "curved";
        WallRadius = camera.WallRadiusMillimetres is { } radius ? Lengths.Bare(radius, units) : "";
        return this;
    }

    /// <summary>The camera; null where something is wrong, and then <see cref="Messages"/> says what.</summary>
    public CameraDefinition? Read()
    {
        Messages.Clear();
        if (Name.Trim().Length == 0)
        {
            Messages[nameof(Name)] = Words.Gear.EmptyName;
        }

        var hole = Length(nameof(Hole), Hole, 0.05, 5, "the hole's diameter");
        var focal = Length(nameof(Focal), Focal, 5, 2000, "the distance from hole to paper");
        var width = Length(nameof(Width), Width, 10, 2000, "the sheet's width");
        var height = Length(nameof(Height), Height, 10, 2000, "the sheet's height");
        double? radius = Curved ? Length(nameof(WallRadius), WallRadius, 5, 2000, "the radius of the wall") : null;
        if (Messages.Count > 0)
        {
            return null;
        }

        var basis = from ?? new CameraDefinition
        {
            Name = "", HoleDiameterMillimetres = 1, FocalDistanceMillimetres = 1, SheetWidthMillimetres = 1, SheetHeightMillimetres = 1,
        };
        return basis with
        {
            Name = Name.Trim(),
            HoleDiameterMillimetres = hole,
            FocalDistanceMillimetres = focal,
            SheetWidthMillimetres = width,
            SheetHeightMillimetres = height,
            PaperShape = Curved ? "curved" : "flat",
            WallRadiusMillimetres = radius,
        };
    }

    private double Length(string field, string text, double min, double max, string what)
        => Messages.Try(field, () => Lengths.Read(text, min, max, what, units));
}
