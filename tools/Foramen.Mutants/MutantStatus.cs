namespace Foramen.Mutants;

/// <summary>What became of a mutant, in the schema's words. Those that did not compile or were left out have none of these.</summary>
internal enum MutantStatus
{
    /// <summary>A test failed, or the process ended.</summary>
    Killed,

    /// <summary>A test that passes without the mutant did not come to an end.</summary>
    Timeout,

    /// <summary>All tests passed.</summary>
    Survived,

    /// <summary>No test meets it.</summary>
    NoCoverage,
}
