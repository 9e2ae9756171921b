namespace Foramen.Architecture.Tests.Samples.Detour.Three;

/// <summary>Names the first namespace as the type of a parameter.</summary>
internal sealed class Third(One.First first)
{
    public override string? ToString() => first.ToString();
}
