using Foramen.Engine.Quantities;

namespace Foramen.Engine.Bath;

/// <summary>What one sheet means to a bottle, on average of its life or as planned: the sheet, the loss, the fresh developer after it.</summary>
/// <param name="Area">Of a sheet.</param>
/// <param name="MeanDensity">Above the paper's white.</param>
/// <param name="Lost">At the transfer.</param>
/// <param name="Fresh">Added after the sheet; room is made for it by pouring away.</param>
public sealed record BottleHabit(Area Area, Density MeanDensity, Volume Lost, Volume Fresh)
{
    /// <summary>The average over the bottle's life; null before its first sheet.</summary>
    public static BottleHabit? Of(DeveloperBottle bottle)
    {
        if (bottle.Sheets == 0 || bottle.AreaDeveloped.SquareMetres <= 0)
        {
            return null;
        }

        return new(
            Area.FromSquareMetres(bottle.AreaDeveloped.SquareMetres / bottle.Sheets),
            Density.FromValue(bottle.DensityAreaSquareMetres / bottle.AreaDeveloped.SquareMetres),
            Volume.FromMillilitres(bottle.Lost.Millilitres / bottle.Sheets),
            Volume.FromMillilitres(Math.Min(bottle.Added.Millilitres / bottle.Sheets, bottle.Capacity.Millilitres)));
    }

    /// <summary>The way of topping up.</summary>
    public TopUpWay Way
    {
        get
        {
            if (Fresh.Millilitres <= 0)
            {
                return TopUpWay.None;
            }

            // Spills vary from sheet to sheet, so up to twice the loss still counts as replacing it.
            return Fresh.Millilitres <= 2 * Lost.Millilitres ? TopUpWay.OnlyLoss : TopUpWay.Refresh;
        }
    }

    /// <summary>The bottle after one more sheet and its topping up.</summary>
    /// <exception cref="RefusalException">Too little to cover the sheet.</exception>
    public DeveloperBottle Next(DeveloperBottle bottle)
    {
        var used = bottle.After(new SheetDeveloped(Area, MeanDensity, Lost));
        return Fresh.Millilitres <= 0 ? used : used.After(TopUp.Of(used, Fresh).Events);
    }
}
