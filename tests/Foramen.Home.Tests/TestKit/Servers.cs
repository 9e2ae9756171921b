using Foramen.Home.Tests.Faults;

[assembly: AssemblyFixture(typeof(Foramen.Home.Tests.TestKit.Servers))]

namespace Foramen.Home.Tests.TestKit;

/// <summary>One PostgreSQL server for all tests, started when first needed.</summary>
public sealed class Servers : IAsyncLifetime
{
    private readonly Lazy<Task<PostgresServer>> postgres = new(PostgresServer.StartAsync);

    internal Task<PostgresServer> PostgresAsync() => postgres.Value;

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        if (postgres.IsValueCreated)
        {
            await (await postgres.Value).DisposeAsync();
        }
    }
}
