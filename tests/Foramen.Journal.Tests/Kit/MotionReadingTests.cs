using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;
using Foramen.Journal.Kit;

namespace Foramen.Journal.Tests.Kit;

public class MotionReadingTests
{
    private static readonly MotionDefinition Thing = new() { Name = "thing", How = "goesAway", Left = 0.1, Top = 0.2, Width = 0.3, Height = 0.4 };

    [Fact]
    public void The_region_lies_where_it_is_written_down()
    {
        var region = Thing.ToRegion();
        Assert.Equal("thing", region.Name);
        Assert.Equal(RectangleInPhotograph.FromFractions(0.1, 0.2, 0.3, 0.4), region.Place);
        Assert.Equal(new GoesAway(), region.Motion);
    }

    [Theory]
    [InlineData(null, true)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    public void A_wheel_turns_with_the_clock_unless_it_is_said_otherwise(bool? anticlockwise, bool clockwise)
        => Assert.Equal(
            new WheelTurns { TurnTime = Duration.FromSeconds(20), Clockwise = clockwise },
            (Thing with { How = "turns", TurnSeconds = 20, Anticlockwise = anticlockwise }).ToRegion().Motion);

    [Fact]
    public void Leaves_sway_and_water_flows()
    {
        Assert.Equal(
            new SwaysInPlace { ReachOfWidth = 0.25, Period = Duration.FromSeconds(3) },
            (Thing with { How = "sways", ReachOfWidth = 0.25, SwingSeconds = 3 }).ToRegion().Motion);
        Assert.Equal(
            new FlowsThrough { Crossing = Duration.FromSeconds(8), Upright = true }, (Thing with { How = "flows", CrossingSeconds = 8, Upright = true }).ToRegion().Motion);
        Assert.Equal(new FlowsThrough { Crossing = Duration.FromSeconds(8), Upright = false }, (Thing with { How = "flows", CrossingSeconds = 8 }).ToRegion().Motion);
    }

    [Theory]
    [InlineData(null, 1)]
    [InlineData(7, 7)]
    public void What_passes_and_lamps_are_one_unless_more_are_said(int? said, int number)
    {
        var passing = Thing with { SpeedMetresPerSecond = 1.5, DistanceMetres = 12, Number = said };
        Assert.Equal(
            new PassesThrough(new Passers
            {
                Width = Length.FromMetres(0.5), Speed = MotionSpeed.FromMetresPerSecond(1.5), Distance = Length.FromMetres(12), LuminanceRatio = 0.2, Number = number,
            }),
            (passing with { How = "passes", WidthMetres = 0.5, LuminanceRatio = 0.2 }).ToRegion().Motion);
        Assert.Equal(
            new LampPasses(new PassingLamp
            {
                Intensity = LuminousIntensity.FromCandelas(20), Speed = MotionSpeed.FromMetresPerSecond(1.5), Distance = Length.FromMetres(12), Number = number,
            }),
            (passing with { How = "lamp", Candelas = 20 }).ToRegion().Motion);
    }

    // From a quarter to three quarters of two minutes: a minute.
    [Fact]
    public void It_is_expected_to_move_from_and_to_where_it_is_said()
    {
        var minutes = Duration.FromMinutes(2);
        Assert.Equal(60, (Thing with { MovesFrom = 0.25, MovesTo = 0.75 }).Expected(minutes).Moving.Seconds, 1e-9);
        Assert.Equal(90, (Thing with { MovesTo = 0.75 }).Expected(minutes).Moving.Seconds, 1e-9);
        Assert.Equal(120, Thing.Expected(minutes).Moving.Seconds, 1e-9);
    }

    [Theory]
    [InlineData(true, false, false, "The width of what passes is missing; say it.")]
    [InlineData(false, true, false, "The speed is missing; say it.")]
    [InlineData(false, false, true, "The distance is missing; say it.")]
    public void What_is_missing_of_what_passes_is_said(bool width, bool speed, bool distance, string sentence)
    {
        var definition = Thing with
        {
            How = "passes",
            WidthMetres = width ? null : 0.5,
            SpeedMetresPerSecond = speed ? null : 1,
            DistanceMetres = distance ? null : 10,
            LuminanceRatio = 0.2,
        };
        Assert.Equal(sentence, Assert.Throws<RefusalException>(definition.ToRegion).Message);
    }

    [Fact]
    public void A_turn_takes_some_time()
        => Assert.Equal(
            "The time of a turn is 0 s; it should be between 0.001 and 10000000 s.",
            Assert.Throws<RefusalException>(() => (Thing with { How = "turns", TurnSeconds = 0 }).ToRegion()).Message);
}
