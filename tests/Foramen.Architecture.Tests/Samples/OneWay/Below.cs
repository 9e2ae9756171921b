namespace Foramen.Architecture.Tests.Samples.OneWay.Lower;

internal static class Below
{
    public static string Name => nameof(Below);
}
