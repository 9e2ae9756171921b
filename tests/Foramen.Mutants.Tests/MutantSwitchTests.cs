namespace Foramen.Mutants.Tests;

public class MutantSwitchTests
{
    private readonly MutantSwitch mutants = MutantSwitch.Of(typeof(MutantControl).Assembly);

    [Fact]
    public void One_mutant_is_on_at_a_time()
    {
        mutants.TurnOn(7);
        Assert.Equal([false, true], new[] { 6, 7 }.Select(MutantControl.IsActive));
        mutants.TurnOn(6);
        Assert.Equal([true, false], new[] { 6, 7 }.Select(MutantControl.IsActive));
    }

    [Fact]
    public void What_is_met_is_told_once_and_no_mutant_is_on_meanwhile()
    {
        mutants.TurnOn(7);
        Assert.Equal([7, 8], mutants.MetWhile(() => Assert.False(MutantControl.IsActive(7) || MutantControl.IsActive(8))));
        Assert.Empty(mutants.MetWhile(() => { }));
        Assert.False(MutantControl.IsActive(7));
    }

    [Fact]
    public void An_assembly_without_mutants_is_refused()
        => Assert.Contains("tools/mutate", Assert.Throws<InvalidOperationException>(() => MutantSwitch.Of(typeof(MutantTrial).Assembly)).Message);
}
