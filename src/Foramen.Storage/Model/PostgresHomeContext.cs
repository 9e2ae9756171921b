using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Foramen.Storage.Model;

/// <summary>The tables on a PostgreSQL server.</summary>
internal sealed class PostgresHomeContext(DbContextOptions<PostgresHomeContext> options) : HomeContext(options)
{
    /// <summary>For writing migrations.</summary>
    internal sealed class DesignTime : IDesignTimeDbContextFactory<PostgresHomeContext>
    {
        public PostgresHomeContext CreateDbContext(string[] args)
            => new(new DbContextOptionsBuilder<PostgresHomeContext>().UseNpgsql("Host=localhost").Options);
    }
}
