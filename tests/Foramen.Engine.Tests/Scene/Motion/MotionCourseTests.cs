using Foramen.Engine.Quantities;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene.Motion;

/// <summary>Spells of an exposure, added up by hand.</summary>
public class MotionCourseTests
{
    // 100 s, from a fifth to seven tenths of it: 20 s of rest, 50 s of motion, 30 s of rest.
    [Fact]
    public void It_stands_moves_and_stands()
    {
        var course = MotionCourse.Between(S(100), 0.2, 0.7);
        Assert.Equal([20.0, 50, 30], course.Spells.Select(spell => Math.Round(spell.Time.Seconds, 9)));
        Assert.Equal([0.2, 0.5, 0.3], course.Spells.Select(spell => Math.Round(spell.Worth, 12)));
        Assert.Equal([false, true, false], course.Spells.Select(spell => spell.Moves));
        Assert.Equal((100.0, 50.0), (Math.Round(course.Exposure.Seconds, 9), Math.Round(course.Moving.Seconds, 9)));
        Assert.Equal(0.5, course.MovingShare, 1e-12);
    }

    [Fact]
    public void Empty_spells_are_left_out_and_worths_add_up_to_one()
    {
        Assert.Equal(1, Assert.Single(MotionCourse.Between(S(60), 0, 1).Spells).Worth);

        // Two thirds of the time are worth a quarter of the light.
        var course = MotionCourse.Of([new(S(40), 2, true), new(S(0), 9, false), new(S(20), 6, false)]);
        Assert.Equal([0.25, 0.75], course.Spells.Select(spell => spell.Worth));
        Assert.Equal((60.0, 40.0, 0.25), (course.Exposure.Seconds, course.Moving.Seconds, course.MovingShare));
    }

    [Fact]
    public void Courses_of_nothing_are_refused()
    {
        Assert.Throws<RefusalException>(() => MotionCourse.Between(default, 0, 1));
        Assert.Throws<RefusalException>(() => MotionCourse.Between(S(1), -0.1, 1));
        Assert.Throws<RefusalException>(() => MotionCourse.Between(S(1), 0.6, 0.5));
        Assert.Throws<RefusalException>(() => MotionCourse.Between(S(1), 0, 1.1));
        Assert.Throws<RefusalException>(() => MotionCourse.Of([]));
        Assert.Throws<RefusalException>(() => MotionCourse.Of([new(S(1), double.NaN, true)]));
        Assert.Throws<RefusalException>(() => MotionCourse.Of([new(S(1), 0, true)]));
        Assert.Throws<RefusalException>(() => new WheelTurns { TurnTime = default });
        Assert.Throws<RefusalException>(() => new FlowsThrough { Crossing = default });
    }

    // 360° in 20 s: 90° in 5 s, a turn and a half in 30 s.
    [Theory]
    [InlineData(5, 90)]
    [InlineData(30, 540)]
    public void A_wheel_turns_at_an_even_rate(double seconds, double degrees) => Assert.Equal(degrees, new WheelTurns { TurnTime = S(20) }.DegreesIn(S(seconds)), 1e-12);

    private static Duration S(double seconds) => Duration.FromSeconds(seconds);
}
