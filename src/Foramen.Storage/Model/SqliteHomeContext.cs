using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Foramen.Storage.Model;

/// <summary>The tables in one SQLite file.</summary>
internal sealed class SqliteHomeContext(DbContextOptions<SqliteHomeContext> options) : HomeContext(options)
{
    /// <summary>For writing migrations.</summary>
    internal sealed class DesignTime : IDesignTimeDbContextFactory<SqliteHomeContext>
    {
        public SqliteHomeContext CreateDbContext(string[] args)
            => new(new DbContextOptionsBuilder<SqliteHomeContext>().UseSqlite("Data Source=:memory:").Options);
    }
}
