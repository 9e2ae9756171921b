using Foramen.Engine.Bath;
using Foramen.Engine.Camera;
using Foramen.Engine.Quantities;
using Foramen.Field.Tests.TestKit;

namespace Foramen.Field.Tests.Sheets.Process;

/// <summary>A day of twelve sheets with one bottle, through the states that the pages use.</summary>
public sealed class TwelveSheetsTests : IDisposable
{
    private readonly FieldContext field = new();

    public void Dispose() => field.Dispose();

    // 127 × 102 mm are 0.012954 m². At 0.9 m²/l and 300 ml a sheet of the reference density takes e = 0.012954/(0.9·V), where V loses 1.5 ml with each sheet
    // (common practice, no source). The middle activity is the mean of 1 − Σe and Π(1 − e), the time is 75 s over it: worked here apart from the code.
    // The harsh capacity is 0.9·4/5.7 m²/l: Σe passes 0.4 with the sixth sheet (5 · 0.0684 < 0.4 < 6 · 0.0684), so from then on the bottle may be below 0.6.
    [Fact]
    public async Task Times_lengthen_as_the_model_says_and_the_warning_comes_when_it_should()
    {
        var day = await BottleDay.BeginAsync(field, capacity: 0.9);
        double additive = 1, multiplicative = 1, litres = 0.3;
        var warnedAfter = 0;
        for (var sheet = 1; sheet <= 12; sheet++)
        {
            var (state, developed) = await day.ProcessAsync();
            Assert.True(developed);
            if (warnedAfter == 0)
            {
                Assert.Equal(Math.Round(75 / ((additive + multiplicative) / 2)), state.Run!.Steps[0].Body.PlannedSeconds);
                var exhaustion = 0.127 * 0.102 / 0.9 / litres;
                (additive, multiplicative, litres) = (additive - exhaustion, multiplicative * (1 - exhaustion), litres - 0.0015);
                Assert.Equal(additive, day.Account.Now.AdditiveActivity, 1e-9);
                Assert.Equal(multiplicative, day.Account.Now.MultiplicativeActivity, 1e-9);
            }

            if (day.Account.Advice().Action == BottleAction.TopUp)
            {
                warnedAfter = warnedAfter == 0 ? sheet : warnedAfter;
                var before = day.Account.Now.Activity.Middle;
                await BottleDay.TopUpAsync(state);
                Assert.True(day.Account.Now.Activity.Middle > before);
            }
        }

        Assert.Equal(6, warnedAfter);
        Assert.Equal(12, day.Account.Now.Sheets);
        Assert.Empty(day.Account.Remarks);
    }

    // 160 ml lose 1.5 ml with each sheet: 151 ml are left after six, 149.5 ml after seven, which do not cover a sheet of 150 ml any more.
    [Fact]
    public async Task Too_little_to_cover_a_sheet_stops_the_next_one_until_it_is_topped_up()
    {
        var day = await BottleDay.BeginAsync(field, millilitres: 160);
        for (var sheet = 1; sheet <= 7; sheet++)
        {
            Assert.True((await day.ProcessAsync()).Developed);
        }

        var (waiting, developed) = await day.ProcessAsync();
        Assert.False(developed);
        Assert.Contains("149.5 ml", waiting.NoTime, StringComparison.Ordinal);
        Assert.Null(waiting.Run);
        var advice = day.Account.Advice();
        Assert.Equal((BottleAction.TopUp, 0.0, 10.5), (advice.Action, advice.TopUp!.Pour.Millilitres, Math.Round(advice.TopUp.Fresh.Millilitres, 6)));
        await field.Session.AppendAsync(new Foramen.Journal.Bodies.BottleToppedUp { Bottle = day.Bottle, PouredMillilitres = 0, FreshMillilitres = 10.5 });
        Assert.True((await day.ProcessAsync()).Developed);
    }

    [Fact]
    public async Task The_kit_list_was_right()
    {
        var kit = KitPlan.For(new KitWish
        {
            Sheets = 12, Spares = 0, Size = SheetSize.FromMillimetres(127, 102), Developer = Volume.FromMillilitres(300), Covering = Volume.FromMillilitres(150),
        });
        var day = await BottleDay.BeginAsync(field);
        for (var sheet = 1; sheet <= 12; sheet++)
        {
            var (state, developed) = await day.ProcessAsync();
            Assert.True(developed);
            await BottleDay.TopUpAsync(state);
        }

        // A bottle and twelve times a tenth of it, as packed; nothing of it has vanished, and the waste fits its container.
        var bottle = day.Account.Now;
        Assert.Equal(kit.Liquids[0].Working.Millilitres, bottle.Filled.Millilitres + bottle.Added.Millilitres, 1e-6);
        Assert.Equal(kit.TopUps.Millilitres, bottle.Added.Millilitres, 1e-6);
        Assert.True(bottle.Volume.Millilitres + bottle.Poured.Millilitres <= kit.Waste.Millilitres);
        Assert.Equal(kit.Paper, bottle.Sheets);
        Assert.Equal(kit.ActivityAtEnd.Middle, bottle.Activity.Middle, 1e-6);
        Assert.Equal(kit.ActivityAtEnd.Low, bottle.Activity.Low, 1e-6);
    }
}
