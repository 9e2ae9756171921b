using Foramen.Engine.Exposure;

namespace Foramen.Engine.Tests.Exposure;

/// <summary>The loss of ADR 0004: r stops over the stops from aim to edge, r² up to 1, 2r − 1 beyond (P. J. Huber, 1964).</summary>
public class ToneAimTests
{
    // The edges lie a stop below the aim and two above.
    [Theory]
    [InlineData(0, 1, 0)]
    [InlineData(0, 0.70710678, 0.25)]
    [InlineData(0, 0.5, 1)]
    [InlineData(0, 0.25, 3)]
    [InlineData(0, 2, 0.25)]
    [InlineData(0, 4, 1)]
    [InlineData(0, 8, 2)]
    [InlineData(0.5, 0.5, 0)]
    [InlineData(0.5, 1.5, 0.25)]
    public void The_loss_is_squared_within_the_band_and_linear_beyond(double flash, double seconds, double loss)
        => Assert.Equal(loss, new ToneAim(1, flash, 0.5, 1, 4, 0.1).LossAt(seconds), 1e-7);

    // A flash lifts the lower edge to the aim: a tenth of a stop stands for it, two tenths are r = 2.
    [Fact]
    public void The_distance_to_an_edge_counts_as_a_tenth_of_a_stop_at_least()
        => Assert.Equal(3, new ToneAim(1, 0, 1, 1, 4, 0.1).LossAt(Math.Pow(2, -0.2)), 1e-9);
}
