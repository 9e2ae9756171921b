using Foramen.Field.Time;

namespace Foramen.Field.Tests.Time;

public sealed class TimeTextTests
{
    [Theory]
    [InlineData(0, "0:00")]
    [InlineData(0.2, "0:01")]
    [InlineData(59.999999, "1:00")]
    [InlineData(200, "3:20")]
    [InlineData(3725, "1:02:05")]
    [InlineData(-3, "0:00")]
    public void Counting_down_ends_at_zero_and_not_before(double seconds, string text) => Assert.Equal(text, TimeText.Clock(seconds));

    [Theory]
    [InlineData(0.9, "0:00")]
    [InlineData(61.9, "1:01")]
    public void Counting_up_never_runs_ahead(double seconds, string text) => Assert.Equal(text, TimeText.Elapsed(seconds));

    [Theory]
    [InlineData(7, "7 s")]
    [InlineData(120, "2 min")]
    [InlineData(200, "3 min 20 s")]
    [InlineData(3720, "1 h 2 min")]
    public void Words(double seconds, string text) => Assert.Equal(text, TimeText.Spoken(seconds));
}
