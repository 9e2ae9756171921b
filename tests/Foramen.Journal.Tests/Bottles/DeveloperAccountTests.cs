using CsCheck;
using Foramen.Engine.Quantities;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using Foramen.Journal.Entries;
using Foramen.Journal.Fold;
using Foramen.Journal.Tests.Entries;
using Foramen.Journal.Tests.TestKit;
using static Foramen.Journal.Tests.Bottles.BottleExamples;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Bottles;

public class DeveloperAccountTests
{
    // Worked apart from the code (difference equations of any textbook; r = 30/300 = 0.10, e = 0.05): multiplicative a ← (1 − r)(1 − e)a + r gives
    // 0.8315 after 5 sheets and 0.7032 after 20; additive a ← (1 − r)(a − e) + r gives 0.8157 and 0.6047. The middle is the mean of both.
    [Theory]
    [InlineData(5, 0.8315, 0.8157)]
    [InlineData(20, 0.7032, 0.6047)]
    public void A_topped_up_bottle_follows_the_closed_form(int sheets, double multiplicative, double additive)
    {
        var account = Account([Square, Mixed, .. Enumerable.Range(0, sheets).SelectMany(n => (EntryBody[])[.. Through(n), ToppedUp(30, 30)])]);
        Assert.Equal(multiplicative, account.Now.MultiplicativeActivity, 0.00006);
        Assert.Equal(additive, account.Now.AdditiveActivity, 0.00006);
        Assert.Equal((multiplicative + additive) / 2, account.Now.Activity.Middle, 0.0001);
        Assert.Equal(75 / ((multiplicative + additive) / 2), account.Now.TimeAt(Temperature.FromCelsius(20)).Time.Middle.Seconds, 0.02);
        Assert.Equal((sheets, 300.0), (account.Now.Sheets, account.Now.Volume.Millilitres));
        Assert.Empty(account.Remarks);
    }

    [Fact]
    public void The_area_is_the_cameras_and_the_density_the_one_stated()
    {
        var account = Account([Square, Mixed, .. Through(1, 1.4)]);
        Assert.Equal(0.01, account.Now.AreaDeveloped.SquareMetres, 1e-12);
        // Twice the reference density takes twice as much: 1 − 2·0.05.
        Assert.Equal(0.9, account.Now.AdditiveActivity, 1e-12);
        Assert.Equal(DensitySource.Stated, Assert.Single(account.Steps).Load!.Source);
    }

    [Fact]
    public void A_sheet_of_unknown_size_and_tones_is_taken_for_usual_and_that_is_said()
    {
        var account = Account([Mixed, new DevelopedIn { Sheet = Id(1), Bottle = BottleId, TemperatureCelsius = 18 }]);
        Assert.Equal(0.102 * 0.127, account.Now.AreaDeveloped.SquareMetres, 1e-12);
        Assert.Equal(DensitySource.Assumed, account.Steps[0].Load!.Source);
        Assert.Contains("size of 1", Assert.Single(account.Remarks), StringComparison.Ordinal);
        Assert.Equal(18, account.Temperature.Celsius);
    }

    [Fact]
    public void A_sheet_said_again_counts_once_in_the_bottle_it_was_last_said_to_be_in()
    {
        var other = Id(30_009);
        var ledger = Folded(
            [Square, Mixed, Mixed with { Bottle = other }, .. Through(1), .. Through(1, 1.4), new DevelopedIn { Sheet = Id(31_002), Bottle = BottleId, TemperatureCelsius = 20 }, new DevelopedIn { Sheet = Id(31_002), Bottle = other, TemperatureCelsius = 20 }]);
        Assert.Equal(0.9, DeveloperAccount.Of(ledger, ledger.Bottles.Find(BottleId)!, Noon.AddDays(1)).Now.AdditiveActivity, 1e-12);
        Assert.Equal(1, DeveloperAccount.Of(ledger, ledger.Bottles.Find(other)!, Noon.AddDays(1)).Now.Sheets);
    }

    [Fact]
    public void It_ages_in_the_open_and_closed_at_the_temperature_read()
    {
        var aging = Mixed with { Developer = Ageless with { OpenLossPerHour = 0.02, ClosedLossPerDay = 0.01, Q10 = 2 } };
        // Closed for a minute, an hour open at 20 °C, an hour open at 30 °C (twice as fast), then closed at 30 °C for the rest of the day.
        var account = AccountAt(
            Noon.AddMinutes(301),
            [
                aging,
                new BottleOpened { Bottle = BottleId },
                .. Enumerable.Repeat<EntryBody>(new BottleWarmthRead { Bottle = BottleId, TemperatureCelsius = 20 }, 59),
                new BottleWarmthRead { Bottle = BottleId, TemperatureCelsius = 30 },
                .. Enumerable.Repeat<EntryBody>(new BottleWarmthRead { Bottle = BottleId, TemperatureCelsius = 30 }, 59),
                new BottleClosed { Bottle = BottleId },
            ]);
        var expected = Math.Exp(-((0.01 / 24 / 60) + 0.02 + (2 * 0.02) + (2 * 0.01 * 3 / 24)));
        Assert.Equal(expected, account.Now.Activity.Middle, 1e-9);
        Assert.False(account.IsOpen);
        Assert.Equal(301 * 60, account.Now.Age.Seconds, 1e-6);
    }

    [Fact]
    public void A_first_tone_that_comes_late_shows_a_weaker_bottle()
    {
        // Factor 7.5 at 75 s: the first tone of a fresh bottle at 20 °C comes after 10 s, so after 12.5 s it has 0.8 of its strength.
        var account = Account([Square, Mixed, new SheetStarted { Sheet = Id(5), Camera = CameraId }, new DevelopedIn { Sheet = Id(5), Bottle = BottleId, TemperatureCelsius = 20, AppearedAfterSeconds = 12.5, MeanDensity = 0 }]);
        Assert.Equal(0.8, account.Now.Activity.Middle, 1e-9);
    }

    [Fact]
    public void What_cannot_have_happened_is_left_out_and_said()
    {
        var account = Account([Square, Mixed, ToppedUp(0, 30), ToppedUp(301, 0), .. Through(1)]);
        Assert.Equal(1, account.Now.Sheets);
        Assert.Equal(300, account.Now.Volume.Millilitres);
        Assert.Equal(2, account.Remarks.Count);
        Assert.All(account.Remarks, remark => Assert.StartsWith("Left out", remark, StringComparison.Ordinal));
    }

    [Fact]
    public void A_clock_set_back_costs_its_stretch_and_is_said()
    {
        var aging = Mixed with { Developer = Ageless with { ClosedLossPerDay = 0.01 } };
        var entries = Phoned((0, aging), (3600, ToppedUp(0, 0)), (1800, ToppedUp(0, 0)));
        var ledger = Ledger.Of(EntrySet.Of(entries));
        var account = DeveloperAccount.Of(ledger, ledger.Bottles.Find(BottleId)!, Noon.AddSeconds(3600));
        Assert.Equal(3600 + 1800, account.Now.Age.Seconds, 1e-6);
        Assert.Contains("went back by 30 min or more", account.ClockDoubt, StringComparison.Ordinal);
        Assert.Equal(account.ClockDoubt, Assert.Single(account.Remarks));
        Assert.False(account.IsBeforeTheLast);
        var early = DeveloperAccount.Of(ledger, ledger.Bottles.Find(BottleId)!, Noon);
        Assert.True(early.IsBeforeTheLast);
        Assert.Contains("shows 30 min before the last thing", early.ClockDoubt, StringComparison.Ordinal);
    }

    [Fact]
    public void Clocks_of_two_devices_that_differ_by_seconds_cast_no_doubt()
    {
        var ledger = Ledger.Of(EntrySet.Of(Phoned((0, Mixed), (3600, ToppedUp(0, 0)), (3570, ToppedUp(0, 0)))));
        var account = DeveloperAccount.Of(ledger, ledger.Bottles.Find(BottleId)!, Noon.AddSeconds(3540));
        Assert.Null(account.ClockDoubt);
        Assert.Empty(account.Remarks);
    }

    // Device and page speak in the largest unit that is not clumsy: minutes up to an hour and a half, hours up to two days.
    [Theory]
    [InlineData(60, "1 min")]
    [InlineData(89 * 60, "89 min")]
    [InlineData(90 * 60, "1.5 h")]
    [InlineData(36 * 3600, "36 h")]
    [InlineData(48 * 3600, "2 days")]
    [InlineData(84 * 3600, "3.5 days")]
    public void A_clock_that_is_early_is_said_in_fitting_units(int seconds, string said)
    {
        var ledger = Ledger.Of(EntrySet.Of(Phoned((0, Mixed), (400_000, ToppedUp(0, 0)))));
        var account = DeveloperAccount.Of(ledger, ledger.Bottles.Find(BottleId)!, Noon.AddSeconds(400_000 - seconds));
        Assert.Contains($"shows {said} before the last thing", account.ClockDoubt, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clock_that_went_back_by_a_minute_is_doubted_and_one_that_stands_at_the_last_thing_is_not()
    {
        var ledger = Ledger.Of(EntrySet.Of(Phoned((0, Mixed), (3600, ToppedUp(0, 0)), (3540, ToppedUp(0, 0)))));
        var account = DeveloperAccount.Of(ledger, ledger.Bottles.Find(BottleId)!, Noon.AddSeconds(3540));
        Assert.Contains("went back by 1 min or more", account.ClockDoubt, StringComparison.Ordinal);
        Assert.False(account.IsBeforeTheLast);
    }

    // Mixed an hour before it was written down; what was said late does not make time run twice: two hours are two hours.
    [Fact]
    public void What_is_written_down_late_happened_when_it_happened()
    {
        Assert.Equal(3600, AccountAt(Noon, [Mixed with { SecondsAgo = 3600 }]).Now.Age.Seconds, 1e-6);
        var read = new BottleWarmthRead { Bottle = BottleId, TemperatureCelsius = 26, SecondsAgo = 1800 };
        foreach (var written in new[] { 3600.0, 3660 })
        {
            var ledger = Ledger.Of(EntrySet.Of(Phoned((0, Mixed), (3600, ToppedUp(0, 0)), (written, read))));
            var account = DeveloperAccount.Of(ledger, ledger.Bottles.Find(BottleId)!, Noon.AddHours(2));
            Assert.Equal(7200, account.Now.Age.Seconds, 1e-6);
            Assert.Equal((26, Noon.AddSeconds(written - 1800)), (account.Temperature.Celsius, account.TemperatureAt));
            Assert.Null(account.ClockDoubt);
        }
    }

    [Fact]
    public void It_is_as_warm_as_when_it_was_mixed_until_a_sheet_says_otherwise()
    {
        var mixed = AccountAt(Noon, [Mixed with { TemperatureCelsius = 25 }]);
        Assert.Equal((25, Noon), (mixed.Temperature.Celsius, mixed.TemperatureAt));
        var unread = AccountAt(Noon, [Mixed with { TemperatureCelsius = null }]);
        Assert.Equal((20, (DateTimeOffset?)null), (unread.Temperature.Celsius, unread.TemperatureAt));
        // The sheet is developed in the fourth entry, three minutes after noon.
        var used = Account([Square, Mixed with { TemperatureCelsius = 25 }, .. Through(1)]);
        Assert.Equal((20, Noon.AddMinutes(3)), (used.Temperature.Celsius, used.TemperatureAt));
    }

    [Fact]
    public void A_colour_stands_until_another_is_noted()
    {
        DevelopedIn Noted(int sheet, DeveloperColour? colour) => new() { Sheet = Id(sheet), Bottle = BottleId, TemperatureCelsius = 20, Colour = colour };
        Assert.Null(Account([Mixed, Noted(1, null)]).Colour);
        Assert.Equal(DeveloperColour.Straw, Account([Mixed, Noted(1, DeveloperColour.Straw), Noted(2, null)]).Colour);
        Assert.Equal(DeveloperColour.Amber, Account([Mixed, Noted(1, DeveloperColour.Straw), Noted(2, DeveloperColour.Amber)]).Colour);
    }

    // 60 of 300 ml replaced by developer of half strength: 0.8·1 + 0.2·0.5 = 0.9; by working strength it stays 1.
    [Theory]
    [InlineData(0.5, 0.9)]
    [InlineData(0.0, 0.8)]
    [InlineData(null, 1.0)]
    public void Weak_developer_weakens(double? strength, double activity)
        => Assert.Equal(activity, Account([Mixed, ToppedUp(60, 60) with { Strength = strength }]).Now.Activity.Middle, 1e-12);

    // 120 ml cover a sheet that takes 100 ml, but not one that takes the usual 150.
    [Fact]
    public void What_covers_a_sheet_is_as_said_or_else_150_ml()
    {
        Assert.Equal(100, Account([Mixed with { VolumeMillilitres = 120 }]).Now.Covering.Millilitres);
        Assert.Equal(150, Account([Mixed with { CoveringMillilitres = null }]).Now.Covering.Millilitres);
        Assert.Throws<RefusalException>(() => Account([Mixed with { VolumeMillilitres = 120, CoveringMillilitres = null }]));
    }

    // Before the first sheet: one of the camera's, at the developer's own density, a tenth of the bottle after it. Then the mean of its sheets:
    // densities 0.4 and 1.2, 2 and 4 ml lost, 20 and 40 ml fresh.
    [Fact]
    public void A_habit_is_assumed_before_the_first_sheet_and_its_own_mean_after_it()
    {
        var fresh = Account([Square, Mixed with { CapacityMillilitres = 500 }]).Habit;
        Assert.Equal((0.01, 1.5, 50), (Math.Round(fresh.Area.SquareMetres, 12), fresh.Lost.Millilitres, Math.Round(fresh.Fresh.Millilitres, 9)));
        Assert.Equal(0.7, fresh.MeanDensity.Value);
        Assert.Equal(0.102 * 0.127, Account([Mixed]).Habit.Area.SquareMetres, 1e-12);
        var used = Account([Square, Mixed, .. Through(1, 0.4, 2), ToppedUp(18, 20), .. Through(2, 1.2, 4), ToppedUp(36, 40)]).Habit;
        Assert.Equal((3.0, 30.0), (used.Lost.Millilitres, used.Fresh.Millilitres));
        Assert.Equal(0.8, used.MeanDensity.Value, 1e-9);
        Assert.Equal(0.01, used.Area.SquareMetres, 1e-12);
    }

    [Fact]
    public void A_bottle_mixed_in_a_way_that_cannot_be_is_refused()
    {
        Assert.Contains("cover", Assert.Throws<RefusalException>(() => Account([Mixed with { VolumeMillilitres = 90 }])).Message, StringComparison.Ordinal);
        Assert.Throws<RefusalException>(() => Account([Mixed with { Contents = BottleContents.Fixer }]));
        Assert.Throws<RefusalException>(() => Account([ToppedUp(0, 0)]));
    }

    [Fact]
    public void A_withdrawn_topping_up_has_not_been()
    {
        var ledger = Folded([Square, Mixed, ToppedUp(30, 30), new EntryVoided { Entry = Id(3) }]);
        Assert.Empty(ledger.Bottles.Find(BottleId)!.Happenings);
        Assert.False(ledger.With(By(Phone, 5, 600, new BottleDiscarded { Bottle = BottleId })).Bottles.Find(BottleId)!.InUse);
    }

    [Fact]
    public void Volume_is_conserved_whatever_happens()
        => Gen.Select(Gen.Int[0, 60], Gen.Int[0, 60], Gen.Int[0, 5], (poured, fresh, lost) => (poured, fresh, lost)).Array[0, 12].Sample(
            days =>
            {
                var account = Account([Square, Mixed, .. days.SelectMany((day, n) => (EntryBody[])[.. Through(n, lost: day.lost), ToppedUp(day.poured, day.fresh)])]);
                var bottle = account.Now;
                Assert.Equal(
                    bottle.Filled.Millilitres + bottle.Added.Millilitres,
                    bottle.Volume.Millilitres + bottle.Lost.Millilitres + bottle.Poured.Millilitres,
                    1e-6);
                Assert.InRange(bottle.Activity.Low, 0, bottle.Activity.Middle);
                Assert.InRange(bottle.Activity.High, bottle.Activity.Middle, 1);
            },
            iter: Samples.Of(200));

    [Fact]
    [Trait("Promise", "J3")]
    public void Any_arrival_gives_the_same_bottle()
        => Gen.Select(GenHistory.Histories, Gen.Int).Sample(
            (history, seed) =>
            {
                var (one, other) = (Ledger.Of(EntrySet.Of(history)), Ledger.Of(EntrySetTests.Merged(history, seed)));
                foreach (var bottle in one.Bottles.All.Where(bottle => bottle.Mixed?.Body.Contents == BottleContents.Developer))
                {
                    var (a, b) = (DeveloperAccount.Of(one, bottle, Noon.AddDays(2)), DeveloperAccount.Of(other, other.Bottles.Find(bottle.Id)!, Noon.AddDays(2)));
                    Assert.Equal(a.Now, b.Now);
                    Assert.Equal(a.Remarks, b.Remarks);
                }
            },
            iter: Samples.Of(200));
}
