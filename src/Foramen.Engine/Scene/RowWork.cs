namespace Foramen.Engine.Scene;

/// <summary>
/// Shares bands of rows among the processor's cores; in a browser, which has one thread for us, does them in turn. Stops between bands when
/// cancelled and reports how far it is.
/// </summary>
internal static class RowWork
{
    /// <summary>Calls <paramref name="body"/> with half-open bands that together cover 0 to <paramref name="rows"/>.</summary>
    /// <param name="rows">Number of rows.</param>
    /// <param name="rowsInBand">Rows to a band.</param>
    /// <param name="body">From, to.</param>
    /// <param name="progress">Told the part done.</param>
    /// <param name="cancellation">Looked at before each band.</param>
    public static void Run(int rows, int rowsInBand, Action<int, int> body, Action<double>? progress = null, CancellationToken cancellation = default)
    {
        var bands = (rows + rowsInBand - 1) / rowsInBand;
        var done = 0;
        void Band(int band)
        {
            body(band * rowsInBand, Math.Min(rows, (band + 1) * rowsInBand));
            if (progress is not null)
            {
                progress(Interlocked.Increment(ref done) / (double)bands);
            }
        }

        if (bands < 2 || OperatingSystem.IsBrowser())
        {
            for (var band = 0; band < bands; band++)
            {
                cancellation.ThrowIfCancellationRequested();
                Band(band);
            }

            return;
        }

        Parallel.For(0, bands, new ParallelOptions { CancellationToken = cancellation }, Band);
    }
}
