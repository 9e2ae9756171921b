using Foramen.Engine.Print;

namespace Foramen.Engine.Tests.Print.Motion;

public class KnownMeanTests
{
    [Theory]
    [InlineData(new[] { 1f, float.NaN, 5f, float.NaN }, new[] { 1f, 3f, 5f, 3f })]
    [InlineData(new[] { 1f, 4f, 4f }, new[] { 1f, 4f, 4f })]
    [InlineData(new[] { float.NaN, float.NaN }, new[] { float.NaN, float.NaN })]
    public void Unknown_values_become_the_mean_of_the_known_ones(float[] line, float[] filled)
    {
        KnownMean.Fill(line);
        Assert.Equal(filled, line);
    }
}
