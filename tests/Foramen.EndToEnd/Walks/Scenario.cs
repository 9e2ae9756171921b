using Microsoft.Playwright;

namespace Foramen.EndToEnd.Walks;

/// <summary>One thing that somebody wants to do with the app.</summary>
/// <param name="Name">What it is called on the page.</param>
/// <param name="Walk">The steps.</param>
internal sealed record Scenario(string Name, Func<Walker, Task> Walk)
{
    /// <summary>A phone that has never seen the app; else one with the demo outing.</summary>
    public bool Fresh { get; init; }

    /// <summary>What is done and not counted: how the sheet has come to where the walk begins.</summary>
    public Func<IPage, Task> Before { get; init; } = _ => Task.CompletedTask;

    /// <summary>Where somebody new stumbled, and what was mended.</summary>
    public string[] Stumbles { get; init; } = [];
}
