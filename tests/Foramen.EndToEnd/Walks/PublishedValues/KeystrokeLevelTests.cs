namespace Foramen.EndToEnd.Walks.PublishedValues;

/// <summary>Operator times of the keystroke-level model.</summary>
[Source("card-1980", "operators", Basis.Memory)]
public sealed class KeystrokeLevelTests
{
    // K = 0.28 s for a typist of 40 words a minute, P = 1.10 s, M = 1.35 s.
    [Theory]
    [InlineData(0, 0, 1, 0.28)]
    [InlineData(0, 1, 0, 1.1)]
    [InlineData(1, 0, 0, 1.35)]
    public void An_operator_takes_what_was_published(int minds, int points, int keys, double seconds) => Assert.Equal(seconds, KeystrokeLevel.Seconds(minds, points, keys), 12);
}
