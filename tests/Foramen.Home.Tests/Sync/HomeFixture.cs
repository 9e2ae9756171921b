using Foramen.Home.Tests.TestKit;
using Microsoft.Extensions.Time.Testing;

namespace Foramen.Home.Tests.Sync;

/// <summary>A Home in this process on a free port, with its data in a directory of its own.</summary>
internal sealed class HomeFixture : IAsyncDisposable
{
    private readonly TempFolder folder = new();

    private HomeFixture()
    {
    }

    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 5, 3, 10, 0, 0, TimeSpan.Zero));

    public RunningHome Home { get; private set; } = null!;

    public HttpClient Client { get; private set; } = null!;

    public string Data => folder.Path;

    public static async Task<HomeFixture> StartAsync(params string[] more)
    {
        var fixture = new HomeFixture();
        fixture.Home = await HomeHost.StartAsync(["--port", "0", "--data", fixture.Data, .. more], fixture.Time);
        fixture.Client = fixture.NewClient();
        return fixture;
    }

    public HttpClient NewClient() => new(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = new Uri(Home.Address) };

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await Home.DisposeAsync();
        folder.Dispose();
    }
}
