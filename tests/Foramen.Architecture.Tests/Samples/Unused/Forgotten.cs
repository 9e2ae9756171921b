namespace Foramen.Architecture.Tests.Samples.Unused;

/// <summary>Two that use each other and are used by nothing else.</summary>
internal static class Forgotten
{
    public static void First() => Second();

    public static void Second() => First();
}
