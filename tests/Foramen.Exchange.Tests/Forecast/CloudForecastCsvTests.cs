using Foramen.Engine.Exposure;
using Foramen.Engine.Quantities;
using Foramen.Exchange.Forecast;

namespace Foramen.Exchange.Tests.Forecast;

public class CloudForecastCsvTests
{
    [Fact]
    public void Lines_of_instant_and_per_cent()
    {
        var chance = Read("from,cloud\n2024-06-20T09:00:00+02:00, 40\n\n2024-06-20T10:00:00Z,75 %\n");
        Assert.Equal(0.40, chance.At(new DateTimeOffset(2024, 6, 20, 11, 59, 0, TimeSpan.FromHours(2))).Fraction, 1e-12);
        Assert.Equal(0.75, chance.At(new DateTimeOffset(2024, 6, 20, 12, 0, 0, TimeSpan.FromHours(2))).Fraction, 1e-12);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("from,cloud\n", "empty")]
    [InlineData("2024-06-20T09:00:00,40", "offset")]
    [InlineData("2024-06-20T09:00:00Z,140", "per cent")]
    [InlineData("2024-06-20T09:00:00Z,NaN", "per cent")]
    [InlineData("2024-06-20T09:00:00Z", "Line 1")]
    [InlineData("2024-06-20T09:00:00Z,1\n2024-06-20T08:00:00Z,1", "order")]
    public void What_is_no_forecast_is_refused(string text, string containing)
        => Assert.Contains(containing, Assert.Throws<RefusalException>(() => Read(text)).Message, StringComparison.Ordinal);

    private static CloudChance Read(string text)
    {
        using var reader = new StringReader(text);
        return CloudForecastCsv.Read(reader);
    }
}
