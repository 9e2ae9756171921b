using Foramen.Engine.Learning;
using Foramen.Journal.Bodies;
using Foramen.Journal.Bottles;
using static Foramen.Journal.Tests.Bottles.BottleExamples;
using static Foramen.Journal.Tests.TestKit.Make;

namespace Foramen.Journal.Tests.Bottles;

public class DeveloperLessonsTests
{
    [Fact]
    public void Without_first_tones_nothing_is_learned()
    {
        var account = Account([Square, Mixed, .. Through(1), .. Through(2)]);

        Assert.Equal(0, account.Learned.FirstTones);
        Assert.StartsWith("No first tone has been seen", account.Learned.Sentence, StringComparison.Ordinal);
        Assert.Equal(7.5, account.Now.Profile.AppearanceFactor);
    }

    [Fact]
    public void First_tones_move_the_developer_of_every_bottle_described_alike()
    {
        var other = Mixed with { Bottle = Id(30_009), Name = "the next one" };
        var different = Mixed with { Bottle = Id(30_010), Name = "another developer", Developer = Ageless with { TimeSeconds = 90 } };
        var ledger = Folded([Square, Mixed, other, different, .. Enumerable.Range(1, 6).Select(n => Seen(n, 12.5))]);

        // 75 s at 20 °C over a first tone at 12.5 s is a factor of 6 where the bottle is fresh; it is said to lose a twentieth with each sheet.
        var next = DeveloperAccount.Of(ledger, ledger.Bottles.Find(other.Bottle)!, Noon.AddDays(1));
        var factor = next.Learned.Parameters[(int)DeveloperParameter.AppearanceFactor];
        Assert.Equal((6, 1), (next.Learned.FirstTones, next.Learned.Bottles));
        Assert.False(factor.IsAssumed);
        Assert.InRange(next.Now.Profile.AppearanceFactor, 6, 7.5);
        Assert.Equal(factor.Value.Middle, next.Now.Profile.AppearanceFactor);
        Assert.Equal(0, DeveloperAccount.Of(ledger, ledger.Bottles.Find(different.Bottle)!, Noon.AddDays(1)).Learned.FirstTones);
    }

    [Fact]
    public void A_number_written_down_by_the_user_stays()
    {
        var own = Mixed with { Developer = Ageless with { Q10 = 2.2 } };
        var account = Account([Square, own, .. Enumerable.Range(1, 6).Select(n => Seen(n, 12.5, 12))]);

        var q10 = account.Learned.Parameters[(int)DeveloperParameter.Q10];
        Assert.True(q10.IsAssumed);
        Assert.Equal(2.2, q10.Before, 9);
        Assert.Equal(Math.Pow(2.2, 0.8), account.Now.Profile.Temperatures.Middle.TimeFactor(Engine.Quantities.Temperature.FromCelsius(12)), 9);
    }

    private static DevelopedIn Seen(int number, double appeared, double celsius = 20) => new()
    {
        Sheet = Id(32_000 + number), Bottle = BottleId, TemperatureCelsius = celsius, MeanDensity = 0.7, LostMillilitres = 0, AppearedAfterSeconds = appeared,
    };
}
