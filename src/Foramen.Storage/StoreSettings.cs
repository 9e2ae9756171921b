namespace Foramen.Storage;

/// <summary>Which database holds the journal.</summary>
public sealed record StoreSettings
{
    private StoreSettings(string? file, string? connection) => (SqliteFile, PostgresConnection) = (file, connection);

    /// <summary>The SQLite file, or null.</summary>
    public string? SqliteFile { get; }

    /// <summary>The connection string of a PostgreSQL database, or null. Holds a password: never to be logged.</summary>
    public string? PostgresConnection { get; }

    /// <summary>How long a write waits for another to end before it is refused.</summary>
    public TimeSpan Patience { get; init; } = TimeSpan.FromSeconds(5);

    /// <summary>Most pages of 4096 bytes that the SQLite file may have; unbounded where null.</summary>
    public int? MostPages { get; init; }

    /// <summary>One SQLite file, made where it is missing.</summary>
    public static StoreSettings Sqlite(string file) => new(file, null);

    /// <summary>A database on a PostgreSQL server; its tables are made where they are missing.</summary>
    public static StoreSettings Postgres(string connection) => new(null, connection);

    /// <inheritdoc/>
    public override string ToString() => SqliteFile ?? "PostgreSQL";
}
