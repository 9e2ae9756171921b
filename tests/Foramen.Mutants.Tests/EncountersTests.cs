namespace Foramen.Mutants.Tests;

public class EncountersTests
{
    private readonly Encounters encounters = new([9]);

    public EncountersTests()
    {
        encounters.Add(0, TimeSpan.FromMilliseconds(30), [1, 2]);
        encounters.Add(1, TimeSpan.FromMilliseconds(10), [2, 3]);
        encounters.Add(2, TimeSpan.FromMilliseconds(20), [9]);
    }

    [Fact]
    public void Only_tests_that_meet_a_mutant_are_asked_and_quick_ones_first()
    {
        Assert.Equal([0], encounters.TestsFor(1));
        Assert.Equal([1, 0], encounters.TestsFor(2));
        Assert.Empty(encounters.TestsFor(4));
    }

    [Fact]
    public void About_what_is_made_once_all_tests_are_asked_after_those_that_meet_it()
    {
        Assert.True(encounters.IsStatic(9));
        Assert.False(encounters.IsStatic(1));
        Assert.Equal([2, 1, 0], encounters.TestsFor(9));
    }
}
