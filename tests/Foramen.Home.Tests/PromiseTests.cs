using System.Reflection;

namespace Foramen.Home.Tests;

/// <summary>docs/promises.md and the tests that carry its ids say the same.</summary>
public class PromiseTests
{
    [Fact]
    public void Every_promise_of_Home_has_a_test_and_every_id_a_promise()
    {
        var promised = File.ReadLines(Path.Combine(AppContext.BaseDirectory, "promises.md"))
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
            .Where(cells => cells.Length == 7 && cells[5] == "Home")
            .Select(cells => cells[1]);
        var tested = typeof(PromiseTests).Assembly.GetTypes()
            .SelectMany(type => type.GetMethods())
            .SelectMany(method => method.GetCustomAttributes<TraitAttribute>())
            .Where(trait => trait.Name == "Promise")
            .Select(trait => trait.Value)
            .Distinct();
        Assert.Equal(promised.Order(), tested.Order());
    }
}
