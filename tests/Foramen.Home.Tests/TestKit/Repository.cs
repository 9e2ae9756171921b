namespace Foramen.Home.Tests.TestKit;

/// <summary>Where the sources lie and how this was built.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string HomeDll { get; } = Path.Combine(
        Root, "src", "Foramen.Home", "bin", AppContext.BaseDirectory.Contains("Release", StringComparison.Ordinal) ? "Release" : "Debug", "net10.0", "Foramen.Home.dll");

    private static string FindRoot()
    {
        var directory = new DirectoryInfo(AppContext.BaseDirectory);
        while (directory is not null && !File.Exists(Path.Combine(directory.FullName, "Foramen.slnx")))
        {
            directory = directory.Parent;
        }

        return directory?.FullName ?? throw new InvalidOperationException("The tests must run inside the repository.");
    }
}
