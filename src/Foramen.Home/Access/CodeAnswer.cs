namespace Foramen.Home.Access;

/// <summary>What came of a pairing code.</summary>
internal enum CodeAnswer
{
    Good,
    Wrong,
    TooOften,
}
