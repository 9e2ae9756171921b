namespace Foramen.TestKit;

/// <summary>How a test came by the values of its source. docs/checks.md prints it beside each.</summary>
internal enum Basis
{
    /// <summary>They stand in the source.</summary>
    Printed,

    /// <summary>Worked by hand, or by another program, from what the source states.</summary>
    Worked,

    /// <summary>Written down from memory of the source, which was not at hand.</summary>
    Memory,

    /// <summary>Computed or read by that library, which shares nothing with the code under test.</summary>
    Library,
}
