namespace Foramen.Engine.Scene;

/// <summary>Shares rows among the processor's cores; in a browser, which has one thread for us, does them in turn.</summary>
internal static class RowBands
{
    private const int RowsInBand = 64;

    /// <summary>Calls <paramref name="body"/> with half-open bands of rows that together cover 0 to <paramref name="rows"/>.</summary>
    public static void Run(int rows, Action<int, int> body)
    {
        var bands = (rows + RowsInBand - 1) / RowsInBand;
        if (bands < 2 || OperatingSystem.IsBrowser())
        {
            body(0, rows);
            return;
        }

        Parallel.For(0, bands, band => body(band * RowsInBand, Math.Min(rows, (band + 1) * RowsInBand)));
    }
}
