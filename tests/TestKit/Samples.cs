using CsCheck;

namespace Foramen.TestKit;

/// <summary>How many samples a law is put to, where CsCheck's own hundred are too few or take too long.</summary>
internal static class Samples
{
    /// <summary>So many by default; more or fewer in the ratio that the environment variable <c>CsCheck_Iter</c> asks for. tools/mutate asks for fewer.</summary>
    public static int Of(int number) => (int)Math.Max(1, number * Check.Iter / 100);
}
