using System.Text.Json;
using Foramen.Home.Tests.Sync;
using Foramen.Home.Tests.TestKit;

namespace Foramen.Home.Tests.Workshops;

/// <summary>A Home with a workshop, its leader, and two people who joined by the code that was shown.</summary>
internal sealed class WorkshopStage : IAsyncDisposable
{
    private WorkshopStage(HomeFixture fixture) => Fixture = fixture;

    public HomeFixture Fixture { get; }

    public Person Leader { get; private set; } = null!;

    public Person Ada { get; private set; } = null!;

    public Person Ben { get; private set; } = null!;

    public int Workshop { get; private set; }

    public string Code { get; private set; } = "";

    public static async Task<WorkshopStage> StartAsync(Servers servers, bool postgres)
    {
        var stage = new WorkshopStage(await HomeFixture.StartAsync(postgres ? ["--postgres", await (await servers.PostgresAsync()).NewDatabaseAsync()] : []));
        stage.Leader = Person.AtHome(stage.Fixture);
        stage.Workshop = await stage.OpenAsync("By the canal");
        stage.Code = await stage.CodeAsync(stage.Workshop);
        stage.Ada = await Person.JoinAsync(stage.Fixture, stage.Code, "ada");
        stage.Ben = await Person.JoinAsync(stage.Fixture, stage.Code, "ben");
        return stage;
    }

    public async Task<int> OpenAsync(string name) => (await JsonAsync("/api/workshops", new { name })).GetProperty("id").GetInt32();

    public async Task<string> CodeAsync(int workshop) => (await JsonAsync($"/api/workshops/{workshop}/code", null)).GetProperty("code").GetString()!;

    public async ValueTask DisposeAsync()
    {
        Leader.Dispose();
        Ada.Dispose();
        Ben.Dispose();
        await Fixture.DisposeAsync();
    }

    private async Task<JsonElement> JsonAsync(string path, object? body)
    {
        var answer = await Leader.AskAsync(HttpMethod.Post, path, body);
        answer.EnsureSuccessStatusCode();
        return JsonDocument.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).RootElement;
    }
}
