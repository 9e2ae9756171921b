using Foramen.Architecture.Tests.Samples.Detour.Three;

namespace Foramen.Architecture.Tests.Samples.Detour.Two;

/// <summary>Names the next namespace in an attribute.</summary>
[System.Diagnostics.DebuggerTypeProxy(typeof(Third))]
internal sealed class Second
{
}
