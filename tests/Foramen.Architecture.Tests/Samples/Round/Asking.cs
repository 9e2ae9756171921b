using Foramen.Architecture.Tests.Samples.Round.There;

namespace Foramen.Architecture.Tests.Samples.Round.Here;

/// <summary>Names the other namespace in a method's body only.</summary>
internal static class Asking
{
    public static int Length() => Answering.Letters().Count();
}
