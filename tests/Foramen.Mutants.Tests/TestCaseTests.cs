namespace Foramen.Mutants.Tests;

public class TestCaseTests
{
    private const string Here = "Foramen.Mutants.Tests.TestCaseTests.";

    public static TheoryData<int, string> Rows => new() { { 1, "one" }, { 2, "two" } };

    [Fact]
    public void Facts_and_every_row_of_a_theory_are_found_in_one_order()
    {
        var names = TestCase.Of(typeof(TestCaseTests).Assembly).Select(test => test.Name).ToList();
        Assert.Equal(names.Order(StringComparer.Ordinal), names);
        Assert.Contains($"{Here}{nameof(Facts_and_every_row_of_a_theory_are_found_in_one_order)}", names);
        Assert.Equal(3, names.Count(name => name.StartsWith($"{Here}{nameof(Rows_written_beside_it_are_called)}", StringComparison.Ordinal)));
        Assert.Equal(2, names.Count(name => name.StartsWith($"{Here}{nameof(Rows_of_a_member_are_called)}", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(1, 1.0)]
    [InlineData(2, 2)]
    [InlineData(3)]
    public void Rows_written_beside_it_are_called(int number, double same = 3) => Assert.Equal(number, same);

    [Theory]
    [InlineData(200, 'C')]
    public void Numbers_take_the_type_of_their_parameter(byte number, int letter) => Assert.Equal((200, 67), (number, letter));

    [Theory]
    [MemberData(nameof(Rows))]
    public void Rows_of_a_member_are_called(int number, string word) => Assert.Equal(word, number == 1 ? "one" : "two");

    [Theory]
    [InlineData(nameof(Rows_written_beside_it_are_called))]
    [InlineData(nameof(Rows_of_a_member_are_called))]
    [InlineData(nameof(Numbers_take_the_type_of_their_parameter))]
    public void Each_row_passes_by_reflection_as_it_does_by_the_library(string method)
        => Assert.All(TestCase.Of(typeof(TestCaseTests).Assembly).Where(test => test.Method.Name == method), test => Assert.True(test.Passes(), test.Name));

    [Theory]
    [InlineData(nameof(Probe.Fine), true)]
    [InlineData(nameof(Probe.FineLater), true)]
    [InlineData(nameof(Probe.Wrong), false)]
    [InlineData(nameof(Probe.WrongLater), false)]
    [InlineData(nameof(Probe.Needs_its_beginning), true)]
    public void A_test_passes_unless_it_throws_at_once_or_later(string method, bool passes)
    {
        Probe.Ended = 0;
        Assert.Equal(passes, new TestCase(method, typeof(Probe).GetMethod(method)!, []).Passes());
        Assert.Equal(1, Probe.Ended);
    }

    internal sealed class Probe : IAsyncLifetime
    {
        private bool begun;

        public static int Ended { get; set; }

        public ValueTask InitializeAsync()
        {
            begun = true;
            return ValueTask.CompletedTask;
        }

        public ValueTask DisposeAsync()
        {
            Ended++;
            return ValueTask.CompletedTask;
        }

#pragma warning disable CA1822 // Called as tests are, on an object of their class.
        public void Fine() => Assert.True(true);

        public async Task FineLater() => await Task.Yield();

        public void Wrong() => Assert.Fail();

        public async Task WrongLater()
        {
            await Task.Yield();
            Assert.Fail();
        }
#pragma warning restore CA1822

        public void Needs_its_beginning() => Assert.True(begun);
    }
}
