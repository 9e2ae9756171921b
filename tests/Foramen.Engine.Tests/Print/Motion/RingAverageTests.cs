using CsCheck;
using Foramen.Engine.Print;
using Foramen.Engine.Quantities;

namespace Foramen.Engine.Tests.Print.Motion;

public class RingAverageTests
{
    // Six even spokes over a circle of 720 samples, each 30 wide: a quarter of the circle.
    private static readonly float[] Spokes = [.. Enumerable.Range(0, 720).Select(i => i % 120 < 30 ? 1f : 0f)];

    // Carried for a time, the least, mean and greatest share of spoke are those that Turning counts on fingers.
    [Fact]
    public void A_wheel_of_spokes_shows_the_shares_of_time_that_spokes_take() => Gen.Double[0.5, 60].Sample(
        seconds =>
        {
            var wheel = Scene.Motion.MotionExamples.Crank;
            var carried = wheel.TurnsIn(Duration.FromSeconds(seconds)) * 720;
            var (least, mean, most) = wheel.SpokeShare(Duration.FromSeconds(seconds));
            var shown = Read(Spokes, new RingShift(0, carried, 1));

            // Half a sample at either end of a spoke.
            var rounding = 1 / Math.Max(1, carried);
            Assert.Equal(least, shown.Min(), rounding + 1e-5);
            Assert.Equal(most, shown.Max(), rounding + 1e-5);
            Assert.Equal(mean, shown.Average(), 1e-5);
        },
        iter: Samples.Of(200));

    [Fact]
    public void The_mean_of_the_ring_is_kept_whatever_the_way() => Gen.Select(Gen.Float[0, 10].Array[24], Gen.Double[-100, 100], Gen.Double[-100, 100]).Sample(
        (ring, from, to) => Assert.Equal(ring.Average(), Read(ring, new RingShift(from, to, 1)).Average(), 1e-4));

    [Fact]
    public void Standing_content_is_carried_to_where_it_stopped()
    {
        float[] ring = [5, 0, 0, 0, 0, 0, 0, 0];
        Assert.Equal(5, Read(ring, new RingShift(3, 3, 1))[3], 1e-6);
        Assert.Equal(5, Read(ring, new RingShift(-3, -3, 1))[5], 1e-6);
        Assert.Equal(2.5, Read(ring, new RingShift(0.5, 0.5, 1))[0], 1e-6);
        Assert.Equal(2.5, Read(ring, new RingShift(0.5, 0.5, 1))[1], 1e-6);
    }

    [Fact]
    public void Spells_add_by_their_weights() => Gen.Select(Gen.Float[0, 10].Array[16], Gen.Double[0, 40], Gen.Double[0, 1]).Sample((ring, way, part) =>
    {
        var whole = Read(ring, new RingShift(0, way, 1));
        var split = Read(ring, new RingShift(0, way * part, part), new RingShift(way * part, way, 1 - part));
        if (way * part < 1 || way * (1 - part) < 1)
        {
            return;
        }

        for (var i = 0; i < ring.Length; i++)
        {
            Assert.Equal(whole[i], split[i], 1e-3);
        }
    });

    // Counted by small steps: each sample is as wide as its distance from the next, and sees what stood so far before it.
    [Theory]
    [InlineData(-6.5, 1)]
    [InlineData(1, -6.5)]
    [InlineData(0.25, 7.75)]
    [InlineData(-7.5, 12.75)]
    [InlineData(3, 4.5)]
    public void A_sample_sees_what_is_carried_past_it(double from, double to)
    {
        float[] ring = [1, 7, 2, 9, 4, 30, 3, 5];
        var shown = Read(ring, new RingShift(from, to, 1));
        const int Steps = 4000;
        for (var i = 0; i < ring.Length; i++)
        {
            var sum = 0.0;
            for (var step = 0; step < Steps; step++)
            {
                var place = (int)Math.Floor(i + 0.5 - (from + ((to - from) * (step + 0.5) / Steps)));
                sum += ring[((place % 8) + 8) % 8];
            }

            Assert.Equal(sum / Steps, shown[i], 0.02);
        }
    }

    private static float[] Read(float[] ring, params RingShift[] shifts)
    {
        var into = new float[ring.Length];
        new RingAverage(ring.Length).Read(ring, shifts, into);
        return into;
    }
}
