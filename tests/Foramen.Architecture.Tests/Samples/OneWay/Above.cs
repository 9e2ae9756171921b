using Foramen.Architecture.Tests.Samples.OneWay.Lower;

namespace Foramen.Architecture.Tests.Samples.OneWay.Upper;

/// <summary>Uses what lies below it, which does not know of it.</summary>
internal static class Above
{
    public static string Name => Below.Name;
}
