using CsCheck;
using Foramen.Engine.Scene;

namespace Foramen.Engine.Tests.Scene;

public class RowWorkTests
{
    [Fact]
    public void Every_row_is_done_once_in_bands_no_larger_than_asked() => Gen.Select(Gen.Int[0, 300], Gen.Int[1, 70]).Sample((rows, rowsInBand) =>
    {
        var times = new int[rows];
        RowWork.Run(rows, rowsInBand, (from, to) =>
        {
            Assert.InRange(to - from, 1, rowsInBand);
            for (var row = from; row < to; row++)
            {
                Interlocked.Increment(ref times[row]);
            }
        });
        Assert.All(times, count => Assert.Equal(1, count));
    });

    [Theory]
    [InlineData(4, new[] { 0.25, 0.5, 0.75, 1.0 })]
    [InlineData(16, new[] { 1.0 })]
    public void How_far_it_is_goes_up_to_all(int rowsInBand, double[] told)
    {
        var seen = new List<double>();
        var gate = new Lock();
        void Tell(double part)
        {
            lock (gate)
            {
                seen.Add(part);
            }
        }

        RowWork.Run(16, rowsInBand, (_, _) => { }, Tell, TestContext.Current.CancellationToken);
        Assert.Equal(told, seen.Order());
    }

    [Theory]
    [InlineData(1)]
    [InlineData(100)]
    public void What_is_cancelled_does_not_begin(int rows)
    {
        var begun = false;
        Assert.ThrowsAny<OperationCanceledException>(() => RowWork.Run(rows, 10, (_, _) => begun = true, null, new CancellationToken(canceled: true)));
        Assert.False(begun);
    }
}
