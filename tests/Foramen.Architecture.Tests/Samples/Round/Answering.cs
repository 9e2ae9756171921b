using Foramen.Architecture.Tests.Samples.Round.Here;

namespace Foramen.Architecture.Tests.Samples.Round.There;

/// <summary>Names the other namespace only inside a lambda inside an iterator: in types that the compiler makes.</summary>
internal static class Answering
{
    public static IEnumerable<char> Letters()
    {
        foreach (var letter in "ab".Where(one => one != 'b' || Asking.Length() > 0))
        {
            yield return letter;
        }
    }
}
