namespace Foramen.Engine.Bath;

/// <summary>What the emulsion is coated on; it decides how much liquid a sheet holds and how it washes.</summary>
public enum SheetBase
{
    /// <summary>Resin-coated: liquid stays in the thin emulsion and on the surface.</summary>
    Coated,

    /// <summary>Fibre: the base soaks, and gives it up slowly.</summary>
    Fibre,
}
