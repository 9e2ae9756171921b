using Foramen.Engine.Bath;

namespace Foramen.Engine.Tests.Bath;

public class CautionsTests
{
    [Fact]
    public void Every_bath_has_its_cautions_and_each_is_short()
    {
        var all = Enum.GetValues<ProcessingBath>().SelectMany(Cautions.For)
            .Concat(Cautions.Mixing).Concat(Cautions.Everywhere).Concat(Cautions.Disposal).Concat(Cautions.Emergency).Append(Cautions.First).ToList();
        Assert.All(Enum.GetValues<ProcessingBath>(), bath => Assert.NotEmpty(Cautions.For(bath)));
        Assert.All(all, line => Assert.True(line.Length <= 120 && line.EndsWith('.'), line));
        Assert.Contains(Cautions.For(ProcessingBath.Developer), line => line.Contains("gloves", StringComparison.Ordinal));
        Assert.Contains(Cautions.For(ProcessingBath.Fix), line => line.Contains("silver", StringComparison.Ordinal));
        Assert.Contains("data sheet", Cautions.First, StringComparison.Ordinal);
    }
}
