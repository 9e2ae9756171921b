using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>
/// One topping up: what goes to waste first and what is then added. A bottle that has lost a millilitre or two has no room for a tenth of
/// its volume, so nearly as much must be poured away as is added.
/// </summary>
/// <param name="Pour">To the waste container, before.</param>
/// <param name="Fresh">Fresh developer, after.</param>
public sealed record TopUp(Volume Pour, Volume Fresh)
{
    /// <summary>Fresh developer for a part of a full bottle, and what must make room for it.</summary>
    /// <param name="bottle">The bottle as it is.</param>
    /// <param name="part">Of its capacity, 0 to 1; a tenth after each sheet is common practice (no source).</param>
    /// <exception cref="RefusalException">Outside the range.</exception>
    public static TopUp Part(DeveloperBottle bottle, double part)
    {
        var fresh = Guard.Within(part, 0, 1, "the part that is topped up") * bottle.Capacity.Millilitres;
        return Of(bottle, Volume.FromMillilitres(fresh));
    }

    /// <summary>A volume of fresh developer, and what must make room for it.</summary>
    /// <exception cref="RefusalException">More than the bottle holds.</exception>
    public static TopUp Of(DeveloperBottle bottle, Volume fresh)
    {
        Guard.Within(fresh.Millilitres, 0, bottle.Capacity.Millilitres, "the fresh developer", "ml");
        var over = bottle.Volume.Millilitres + fresh.Millilitres - bottle.Capacity.Millilitres;
        return new(Volume.FromMillilitres(Math.Clamp(over, 0, bottle.Volume.Millilitres)), fresh);
    }

    /// <summary>Fresh developer into the room there is: what was lost and no more.</summary>
    public static TopUp ToTheBrim(DeveloperBottle bottle)
        => new(default, Volume.FromMillilitres(Math.Max(0, bottle.Capacity.Millilitres - bottle.Volume.Millilitres)));

    /// <summary>As events, in their order.</summary>
    public IReadOnlyList<BottleEvent> Events => [new PouredAway(Pour), new FreshAdded(Fresh)];
}
