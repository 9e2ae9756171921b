using Foramen.Cli.Time;
using Foramen.Engine.Bath;
using Foramen.Engine.Learning;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Fold;

namespace Foramen.Cli.Output;

/// <summary>An account of a bottle as the report of <c>foramen bath</c>.</summary>
internal static class BathReporting
{
    public static BathReport Report(Ledger ledger, DeveloperAccount account, DeveloperBottle bottle, Temperature temperature, string temperatureFrom)
    {
        var advice = BottleAdvice.For(bottle, account.Habit);
        var left = advice.SheetsLeft!;
        var time = TimeOf(bottle, temperature);
        return new BathReport
        {
            Bottle = account.Bottle.Id.ToString(),
            Name = account.Bottle.Mixed!.Body.Name,
            At = InstantText.Of(account.At),
            TemperatureCelsius = temperature.Celsius,
            TemperatureFrom = temperatureFrom,
            Activity = Spread(bottle.Activity),
            DevelopSeconds = time is null ? null : new(time.Time.Low.Seconds, time.Time.Middle.Seconds, time.Time.High.Seconds),
            FirstToneSeconds = time?.Time.Middle.Seconds / bottle.Profile.AppearanceFactor,
            ShortestSeconds = time?.Minimum.Seconds,
            SheetsLeft = new(left.Sheets.Low, left.Sheets.Middle, left.Sheets.High, Word(left.End)),
            Advice = new BathAdviceReport
            {
                Action = Word(advice.Action),
                Reason = advice.Reason,
                PourMl = advice.TopUp?.Pour.Millilitres,
                FreshMl = advice.TopUp?.Fresh.Millilitres,
                Way = Word(account.Habit.Way),
                LeadsTo = advice.LeadsTo!,
            },
            Volume = new(
                bottle.Volume.Millilitres,
                bottle.Filled.Millilitres,
                bottle.Added.Millilitres,
                bottle.Lost.Millilitres,
                bottle.Poured.Millilitres,
                bottle.Capacity.Millilitres,
                bottle.Covering.Millilitres),
            SheetsDeveloped = bottle.Sheets,
            SquareMetresDeveloped = bottle.AreaDeveloped.SquareMetres,
            ByProductsM2PerLitre = bottle.ByProductsSquareMetresPerLitre,
            AgeHours = bottle.Age.Seconds / 3600,
            Open = account.IsOpen,
            Colour = account.Colour is { } colour ? Word(colour) : null,
            Steady = Steady(bottle, account.Habit),
            Developer = Developer(account.Learned),
            Sheets = [.. account.Steps.Where(step => step.Load is not null).Select(step => Sheet(ledger, step))],
            Fixers = [.. ledger.Bottles.All.Where(each => each is { InUse: true, Mixed.Body.Contents: BottleContents.Fixer }).Select(each => Fixer(ledger, each, temperature))],
            Warnings = time?.Warnings ?? (DeveloperWarmth.Warning(temperature) is { } warning ? [warning] : []),
            Remarks = account.Remarks,
            Cautions = [Cautions.First, .. Cautions.For(ProcessingBath.Developer), .. Cautions.For(ProcessingBath.Fix)],
        };
    }

    // A bottle that is too weak or too empty has no time; the advice says what to do with it.
    private static DevelopmentTime? TimeOf(DeveloperBottle bottle, Temperature temperature)
    {
        DeveloperWarmth.Check(temperature);
        return bottle.Activity.Middle < bottle.Profile.ActivityLimit || bottle.Volume < bottle.Covering ? null : bottle.TimeAt(temperature);
    }

    private static BathSteadyReport? Steady(DeveloperBottle bottle, BottleHabit habit)
    {
        if (habit.Way == TopUpWay.None)
        {
            return null;
        }

        var full = bottle with { Volume = bottle.Capacity };
        var state = SteadyState.For(
            Math.Clamp(habit.Fresh.Millilitres / bottle.Capacity.Millilitres, 1e-4, 1),
            Math.Min(1, full.ExhaustionBy(habit.Area, habit.MeanDensity).Middle));
        return new(state.Refreshed, state.Exhaustion, state.Additive, state.Multiplicative);
    }

    private static BathSheetReport Sheet(Ledger ledger, DeveloperStep step)
    {
        var said = (DevelopedIn)step.Happening.Said;
        var celsius = said.TemperatureCelsius;
        var known = celsius is >= DeveloperWarmth.RefusedBelowCelsius and <= DeveloperWarmth.RefusedAboveCelsius;
        return new(
            said.Sheet.ToString(),
            ledger.Sheets.Find(said.Sheet)?.Started?.Body.Name,
            InstantText.Of(step.Happening.HappenedAt),
            step.Load!.Area.SquareCentimetres,
            step.Load.MeanDensity.Value,
            Word(step.Load.Source),
            celsius,
            step.Before.Activity.Middle,
            known ? TimeOf(step.Before, Temperature.FromCelsius(celsius))?.Time.Middle.Seconds : null,
            said.DevelopedSeconds);
    }

    private static BathDeveloperReport Developer(LearnedDeveloper learned)
    {
        return new(
            learned.FirstTones,
            learned.Bottles,
            learned.Sentence,
            Parameter(DeveloperParameter.AppearanceFactor),
            Parameter(DeveloperParameter.Capacity),
            Parameter(DeveloperParameter.OpenLoss),
            Parameter(DeveloperParameter.Q10));

        BathParameterReport Parameter(DeveloperParameter which)
        {
            var one = learned.Parameters.First(each => each.Parameter == which);
            return new(one.Value.Low, one.Value.Middle, one.Value.High, one.Before, one.IsAssumed ? "assumed" : "learned");
        }
    }

    private static BathFixerReport Fixer(Ledger ledger, Bottle bottle, Temperature temperature)
    {
        var account = FixerAccount.Of(ledger, bottle);
        return new(
            bottle.Id.ToString(),
            bottle.Mixed!.Body.Name,
            FixingTime.At(account.Time, temperature).Seconds,
            account.Now.Sheets,
            account.Now.SilverGramsPerLitre,
            account.Now.SquareMetresPerLitre,
            account.SheetsLeft,
            account.Now.IsSpent);
    }

    private static SpreadReport Spread(Spread<double> spread) => new(spread.Low, spread.Middle, spread.High);

    private static string Word<T>(T value)
        where T : struct, Enum
    {
        var word = value.ToString();
        return char.ToLowerInvariant(word[0]) + word[1..];
    }
}
