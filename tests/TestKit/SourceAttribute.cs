using Xunit.v3;

namespace Foramen.TestKit;

/// <summary>
/// Where the values of a test, or of all tests of a class, come from: a key of docs/references.bib. What a test says itself takes the place of what its class
/// says. It is a trait too, so that <c>-trait Source=iso-6846</c> runs the checks against one source. Read as text by tools/Foramen.Pages,
/// which makes docs/checks.md of it: write it on one line, with literals.
/// </summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Method, AllowMultiple = true)]
internal sealed class SourceAttribute(string key, string at, Basis basis = Basis.Printed) : Attribute, ITraitAttribute
{
    public SourceAttribute(string key, Basis basis = Basis.Printed)
        : this(key, string.Empty, basis)
    {
    }

    /// <summary>Of docs/references.bib; <c>common-practice</c> where the trade has no source.</summary>
    public string Key => key;

    /// <summary>The page, table, section or equation.</summary>
    public string At => at;

    public Basis Basis => basis;

    public IReadOnlyCollection<KeyValuePair<string, string>> GetTraits() => [new("Source", key)];
}
