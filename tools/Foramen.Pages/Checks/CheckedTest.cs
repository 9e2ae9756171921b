namespace Foramen.Pages.Checks;

/// <summary>A test and what it says about its values.</summary>
/// <param name="Name">Of the method.</param>
/// <param name="Comment">The lines above it.</param>
/// <param name="Rows">The arguments of its rows, as written.</param>
/// <param name="Sources">What is cited; the class's where the test says nothing.</param>
/// <param name="IsOwnRule">Marked as a rule of our own.</param>
public sealed record CheckedTest(string Name, string Comment, IReadOnlyList<string> Rows, IReadOnlyList<CitedSource> Sources, bool IsOwnRule);
