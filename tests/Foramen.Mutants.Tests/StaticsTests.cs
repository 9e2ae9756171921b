namespace Foramen.Mutants.Tests;

public class StaticsTests
{
    [Fact]
    public void What_is_made_once_and_what_is_put_off_is_made()
    {
        Statics.Make(typeof(StaticsTests).Assembly);
        Assert.Equal(["field", "lazy"], Made.Order(StringComparer.Ordinal));
        Statics.Make(typeof(StaticsTests).Assembly);
        Assert.Equal(2, Made.Count);
    }

    private static readonly List<string> Made = [];

    private static class Kept
    {
        private static readonly int Field = Add("field");
        private static readonly Lazy<int> Later = new(() => Add("lazy"));

        public static int Sum => Field + Later.Value;

        private static int Add(string what)
        {
            Made.Add(what);
            return Made.Count;
        }
    }
}
