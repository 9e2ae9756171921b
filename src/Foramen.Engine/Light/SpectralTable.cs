using System.Globalization;

namespace Foramen.Engine.Light;

/// <summary>
/// A published table of values by wavelength. Wavelengths the table does not hold read zero.
/// </summary>
internal sealed class SpectralTable
{
    private readonly SortedDictionary<int, double[]> rows = [];

    private SpectralTable()
    {
    }

    /// <summary>Last wavelength of the table, nm.</summary>
    public int LastNanometres { get; private set; }

    /// <summary>Reads the embedded table of this file name.</summary>
    public static SpectralTable Read(string fileName)
    {
        var table = new SpectralTable();
        foreach (var cells in TableLines.Read(fileName))
        {
            var nanometres = int.Parse(cells[0], CultureInfo.InvariantCulture);
            table.rows[nanometres] = [.. cells.Skip(1).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
            table.LastNanometres = Math.Max(table.LastNanometres, nanometres);
        }

        return table;
    }

    /// <summary>The value in a column (0 is the first after the wavelength) at a wavelength, zero where the table has no row.</summary>
    public double At(int nanometres, int column) => rows.TryGetValue(nanometres, out var row) ? row[column] : 0;
}
