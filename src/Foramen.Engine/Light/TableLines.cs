namespace Foramen.Engine.Light;

/// <summary>
/// The rows of a published table embedded in this assembly. Lines that start with # are its source note; the first other line is its heading.
/// </summary>
internal static class TableLines
{
    /// <summary>The cells of each row after the heading.</summary>
    public static List<string[]> Read(string fileName)
    {
        using var stream = typeof(TableLines).Assembly.GetManifestResourceStream($"Foramen.Engine.Light.Tables.{fileName}")
            ?? throw new InvalidOperationException($"The table {fileName} is missing from the build.");
        using var reader = new StreamReader(stream);
        var rows = new List<string[]>();
        while (reader.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#')
            {
                rows.Add(line.Split(','));
            }
        }

        rows.RemoveAt(0);
        return rows;
    }
}
