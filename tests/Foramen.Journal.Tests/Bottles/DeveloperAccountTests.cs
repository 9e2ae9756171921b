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
