using System.Globalization;

namespace Foramen.Engine.Bath;

/// <summary>
/// What to do with a bottle before the next sheet, and what the user's way of topping up leads to. The rules: replace below the
/// activity limit or beyond the data; top up where a sheet is not covered, or where the lower bound, or the sheet after the next, would be below
/// the limit; use it as it is from 95 %; between, lengthen the time.
/// </summary>
public sealed record BottleAdvice
{
    private const double AsGoodAsFresh = 0.95;
    private const double WorthReaching = 0.85;

    private BottleAdvice()
    {
    }

    /// <summary>What to do.</summary>
    public required BottleAction Action { get; init; }

    /// <summary>Why, in one sentence.</summary>
    public required string Reason { get; init; }

    /// <summary>How much to pour and add; null unless topping up.</summary>
    public TopUp? TopUp { get; init; }

    /// <summary>What that leads to, in one or two sentences; null before the first sheet.</summary>
    public string? LeadsTo { get; init; }

    /// <summary>Sheets to come; null before the first sheet.</summary>
    public SheetsLeft? SheetsLeft { get; init; }

    /// <summary>Advice for the sheets to come, which are like those that were unless <paramref name="habit"/> is given.</summary>
    public static BottleAdvice For(DeveloperBottle bottle, BottleHabit? habit = null)
    {
        habit ??= BottleHabit.Of(bottle);
        var left = habit is null ? null : SheetsLeft.For(bottle, habit);
        var (action, reason, topUp) = Decide(bottle, habit);
        return new BottleAdvice
        {
            Action = action,
            Reason = reason,
            TopUp = topUp,
            LeadsTo = habit is null || left is null ? null : Consequence(bottle, habit, left),
            SheetsLeft = left,
        };
    }

    private static (BottleAction Action, string Reason, TopUp? TopUp) Decide(DeveloperBottle bottle, BottleHabit? habit)
    {
        var (profile, activity) = (bottle.Profile, bottle.Activity);
        if (activity.Middle < profile.ActivityLimit)
        {
            return (BottleAction.Replace, Text(
                $"It has about {activity.Middle:P0} of its strength; below {profile.ActivityLimit:P0} no time makes up for it."), null);
        }

        if (bottle.ByProductsSquareMetresPerLitre > profile.KnownToSquareMetresPerLitre)
        {
            return (BottleAction.Replace, Text(
                $"It holds the by-products of {bottle.ByProductsSquareMetresPerLitre:0.0} m² to the litre, and nothing is known beyond {profile.KnownToSquareMetresPerLitre:0.0} m²."), null);
        }

        if (bottle.Age > profile.KnownAge)
        {
            return (BottleAction.Replace, Text(
                $"It is {bottle.Age.Seconds / 86400:0} days old, and nothing is known beyond {profile.KnownAge.Seconds / 86400:0} days."), null);
        }

        if (bottle.Volume < bottle.Covering)
        {
            return (BottleAction.TopUp, Text(
                $"{bottle.Volume.Millilitres:0.#} ml do not cover a sheet, which takes {bottle.Covering.Millilitres:0.#} ml."),
                TopUp.ToTheBrim(bottle));
        }

        if (activity.Low < profile.ActivityLimit)
        {
            return (BottleAction.TopUp, Text(
                $"It has {activity.Low:P0} to {activity.High:P0} of its strength, so it may be below {profile.ActivityLimit:P0} already."),
                Strengthening(bottle));
        }

        if (habit is not null && bottle.After(new SheetDeveloped(habit.Area, habit.MeanDensity, default)).Activity.Middle < profile.ActivityLimit)
        {
            return (BottleAction.TopUp, Text($"The next sheet would take it below {profile.ActivityLimit:P0} of its strength."), Strengthening(bottle));
        }

        return activity.Middle >= AsGoodAsFresh
            ? (BottleAction.Use, "It is as good as fresh.", null)
            : (BottleAction.Extend, Text($"It has about {activity.Middle:P0} of its strength; the longer time makes up for that."), null);
    }

    /// <summary>As much fresh developer as brings the middle activity to a useful level, half the bottle at the most.</summary>
    private static TopUp Strengthening(DeveloperBottle bottle)
    {
        var activity = bottle.Activity.Middle;
        var part = Math.Clamp((WorthReaching - activity) / (1 - activity), 0.1, 0.5);
        return TopUp.Part(bottle, part);
    }

    private static string Consequence(DeveloperBottle bottle, BottleHabit habit, SheetsLeft left)
    {
        var count = left.Sheets.Middle >= SheetsLeft.Horizon
            ? ""
            : Text($" About {left.Sheets.Middle} more sheets ({left.Sheets.Low} to {left.Sheets.High}){Because(left.End)}.");
        if (habit.Way == TopUpWay.None)
        {
            return Text($"Nothing is topped up: each sheet weakens the bottle and takes {habit.Lost.Millilitres:0.#} ml.") + count;
        }

        var capacity = bottle.Capacity.Millilitres;
        var exhaustion = (bottle with { Volume = bottle.Capacity }).ExhaustionBy(habit.Area, habit.MeanDensity);
        var refreshed = Math.Clamp(habit.Fresh.Millilitres / capacity, 1e-4, 1);
        var worst = SteadyState.For(refreshed, Math.Min(1, exhaustion.Middle));
        var settles = worst.Additive >= bottle.Profile.ActivityLimit
            ? Text($"the strength settles at {worst.Additive:P0} to {worst.Multiplicative:P0}")
            : worst.Multiplicative >= bottle.Profile.ActivityLimit ? "the bottle may die" : "the bottle dies";
        return habit.Way == TopUpWay.OnlyLoss
            ? Text($"Only what was lost is replaced: by-products climb towards {worst.ByProductSheets:0} sheets' worth and {settles}.") + count
            : Text($"Each sheet brings {habit.Fresh.Millilitres:0.#} ml fresh and sends {Math.Max(0, habit.Fresh.Millilitres - habit.Lost.Millilitres):0.#} ml to waste: by-products settle at {worst.ByProductSheets:0.#} sheets' worth and {settles}.") + count;
    }

    private static string Because(BottleEnd end) => end switch
    {
        BottleEnd.Activity => " until it is too weak",
        BottleEnd.Volume => " until too little is left to cover one",
        BottleEnd.Data => " until nothing more is known of such a bottle",
        _ => "",
    };

    private static string Text(FormattableString sentence) => sentence.ToString(CultureInfo.InvariantCulture);
}
