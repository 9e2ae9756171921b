using Foramen.Engine.Bath;
using static Foramen.Engine.Tests.Bath.BathExamples;

namespace Foramen.Engine.Tests.Bath;

public class BottleHabitTests
{
    [Theory]
    [InlineData(0, TopUpWay.None)]
    [InlineData(0.5, TopUpWay.OnlyLoss)]
    [InlineData(3, TopUpWay.OnlyLoss)]
    [InlineData(3.1, TopUpWay.Refresh)]
    [InlineData(30, TopUpWay.Refresh)]
    public void Up_to_twice_the_loss_only_replaces_it(double fresh, TopUpWay way) => Assert.Equal(way, new BottleHabit(Cm2(129), D(0.7), Ml(1.5), Ml(fresh)).Way);

    [Fact]
    public void A_bottle_without_a_sheet_has_no_habit()
        => Assert.Null(BottleHabit.Of(DeveloperBottle.Fill(DeveloperProfile.Paper, Ml(300), Ml(150))));

    [Fact]
    public void A_habit_that_is_followed_is_found_again()
    {
        var habit = new BottleHabit(Cm2(129), D(0.7), Ml(2), Ml(20));
        var bottle = DeveloperBottle.Fill(DeveloperProfile.Paper, Ml(300), Ml(150));
        for (var sheet = 0; sheet < 5; sheet++)
        {
            bottle = habit.Next(bottle);
            Assert.Equal(300, bottle.Volume.Millilitres, 1e-9);
        }

        var found = BottleHabit.Of(bottle)!;
        Assert.Equal(habit.Area.SquareMetres, found.Area.SquareMetres, 1e-12);
        Assert.Equal(habit.MeanDensity.Value, found.MeanDensity.Value, 1e-12);
        Assert.Equal(habit.Lost.Millilitres, found.Lost.Millilitres, 1e-9);
        Assert.Equal(habit.Fresh.Millilitres, found.Fresh.Millilitres, 1e-9);
    }

    [Fact]
    public void Without_topping_up_a_sheet_takes_its_loss_and_no_more()
        => Assert.Equal(298, new BottleHabit(Cm2(129), D(0.7), Ml(2), default).Next(DeveloperBottle.Fill(DeveloperProfile.Paper, Ml(300), Ml(150))).Volume.Millilitres, 1e-9);
}
