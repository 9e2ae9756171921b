namespace Foramen.Architecture.Tests;

/// <summary>Within a project namespaces stand in an order: none is used by one that it uses itself, not even by a detour.</summary>
public class NamespaceCycleTests
{
    private const string Samples = "Foramen.Architecture.Tests.Samples";

    [Theory]
    [InlineData("Foramen.Engine")]
    [InlineData("Foramen.Journal")]
    [InlineData("Foramen.Exif")]
    [InlineData("Foramen.Imaging")]
    [InlineData("Foramen.Exchange")]
    [InlineData("Foramen.Rehearsal")]
    [InlineData("Foramen.Storage")]
    [InlineData("Foramen.Field")]
    [InlineData("Foramen.Home")]
    [InlineData("Foramen.Cli", "foramen")]
    public void Namespaces_use_each_other_one_way_only(string project, string? file = null)
    {
        var cycles = NamespaceUses.Read(Compiled(file ?? project), project).Cycles();
        Assert.True(cycles.Count == 0, string.Join(Environment.NewLine, cycles));
    }

    // If uses were not found, neither would a cycle be.
    [Theory]
    [InlineData("Foramen.Engine", "Scene", "Light")]
    [InlineData("Foramen.Journal", "Fold", "Bodies")]
    [InlineData("Foramen.Home", "Foramen.Home", "Api")]
    public void Uses_that_are_allowed_are_seen(string project, string from, string to)
        => Assert.Contains((from, to), NamespaceUses.Read(Compiled(project), project).Pairs);

    [Fact]
    public void A_cycle_through_bodies_and_lambdas_is_named_by_its_types()
        => Assert.Equal(["Here uses There: Asking -> Answering", "There uses Here: Answering -> Asking"], CyclesOf("Round"));

    [Fact]
    public void A_cycle_by_a_detour_through_arguments_and_attributes_is_named()
        => Assert.Equal(["One uses Two: First -> Second", "Three uses One: Third -> First", "Two uses Three: Second -> Third"], CyclesOf("Detour"));

    [Fact]
    public void What_is_used_one_way_is_no_cycle()
    {
        Assert.Equal([("Upper", "Lower")], NamespaceUses.Read(Compiled("Foramen.Architecture.Tests"), $"{Samples}.OneWay").Pairs);
        Assert.Empty(CyclesOf("OneWay"));
    }

    private static IReadOnlyList<string> CyclesOf(string sample) => NamespaceUses.Read(Compiled("Foramen.Architecture.Tests"), $"{Samples}.{sample}").Cycles();

    private static string Compiled(string file) => Path.Combine(AppContext.BaseDirectory, $"{file}.dll");
}
