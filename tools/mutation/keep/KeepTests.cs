using System.Reflection;

namespace Foramen.Keep.Tests;

/// <summary>Run by the mutation tool several times; the last time it has changed the assembly.</summary>
public class KeepTests
{
    [Fact]
    public void The_changed_assembly_is_kept()
    {
        var values = typeof(KeepTests).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().ToDictionary(value => value.Key, value => value.Value!);
        var changed = Path.Combine(AppContext.BaseDirectory, values["Changed"] + ".dll");
        File.Copy(changed, values["Kept"], overwrite: true);
        Assert.True(File.Exists(values["Kept"]));

        // The tool takes the mutants for met by every test where none is met, and would ask about each.
        Assembly.LoadFrom(changed).GetTypes().FirstOrDefault(type => type.Name == "MutantControl")?.GetMethod("IsActive")!.Invoke(null, [0]);
    }
}
