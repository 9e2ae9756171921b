using Foramen.Architecture.Tests.Samples.Detour.Two;

namespace Foramen.Architecture.Tests.Samples.Detour.One;

/// <summary>Names the next namespace as the argument of a generic type.</summary>
internal sealed class First
{
    public List<Second[]> Next { get; } = [];
}
