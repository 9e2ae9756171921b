namespace Foramen.Home.Tests;

/// <summary>docs/promises.md and the tests that carry its ids say the same.</summary>
public class PromiseTests
{
    [Fact]
    public void Every_promise_of_Home_has_a_test_and_every_id_a_promise()
        => Assert.Equal(Promises.Stated("Home"), Promises.Tested(typeof(PromiseTests).Assembly));
}
