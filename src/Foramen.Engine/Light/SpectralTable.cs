using System.Globalization;

namespace Foramen.Engine.Light;

/// <summary>
/// A published table embedded in this assembly: lines starting with # are its source note, then a heading, then one row for each
/// wavelength, ascending. Wavelengths below the table read zero; those above it read zero too, unless asked to hold the last row.
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
        using var stream = typeof(SpectralTable).Assembly.GetManifestResourceStream($"Foramen.Engine.Light.Tables.{fileName}")
            ?? throw new InvalidOperationException($"The table {fileName} is missing from the build.");
        using var reader = new StreamReader(stream);
        var table = new SpectralTable();
        var headingSeen = false;
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            if (!headingSeen)
            {
                headingSeen = true;
                continue;
            }

            var cells = line.Split(',');
            var nanometres = int.Parse(cells[0], CultureInfo.InvariantCulture);
            table.rows[nanometres] = [.. cells.Skip(1).Select(cell => double.Parse(cell, CultureInfo.InvariantCulture))];
            table.LastNanometres = Math.Max(table.LastNanometres, nanometres);
        }

        return table;
    }

    /// <summary>The value in a column (0 is the first after the wavelength) at a wavelength, zero where the table has no row.</summary>
    public double At(int nanometres, int column) => rows.TryGetValue(nanometres, out var row) ? row[column] : 0;
}
