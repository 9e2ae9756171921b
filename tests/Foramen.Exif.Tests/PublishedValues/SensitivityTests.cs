using Foramen.Exif.Tests.TestKit;

namespace Foramen.Exif.Tests.PublishedValues;

/// <summary>
/// Exif 2.3 (CIPA DC-008-2012), section 4.6.5: PhotographicSensitivity holds the sensitivity up to 65534; 65535 stands for more, and then
/// StandardOutputSensitivity, RecommendedExposureIndex or ISOSpeed, as SensitivityType says (1 = SOS, 2 = REI, 3 = ISO speed), holds it.
/// </summary>
[Source("exif-2.3", "section 4.6.5")]
public sealed class SensitivityTests
{
    [Theory]
    [InlineData(ExifTag.StandardOutputSensitivity, 1)]
    [InlineData(ExifTag.RecommendedExposureIndex, 2)]
    [InlineData(ExifTag.IsoSpeed, 3)]
    public void The_escape_points_to_the_tag_of_its_type(ushort tag, ushort type)
    {
        var facts = Shots.FactsOf(new ExifWriter()
            .Exif(ExifTag.PhotographicSensitivity, ExifValue.Word(65535))
            .Exif(ExifTag.SensitivityType, ExifValue.Word(type))
            .Exif(tag, ExifValue.DoubleWord(204800)));

        Assert.Equal(204800, facts.Speed!.Value.Iso);
        Assert.Empty(facts.Doubts);
    }

    [Theory]
    [InlineData(ExifTag.StandardOutputSensitivity)]
    [InlineData(ExifTag.RecommendedExposureIndex)]
    [InlineData(ExifTag.IsoSpeed)]
    public void The_longer_tags_do_alone(ushort tag)
        => Assert.Equal(100, Shots.FactsOf(tag, ExifValue.DoubleWord(100)).Speed!.Value.Iso);

    [Fact]
    public void The_escape_alone_leaves_the_sensitivity_open()
    {
        var facts = Shots.FactsOf(ExifTag.PhotographicSensitivity, ExifValue.Word(65535));

        Assert.Null(facts.Speed);
        Assert.Contains("65535", Assert.Single(facts.Doubts), StringComparison.Ordinal);
    }

    [Fact]
    [OwnRule]
    public void The_first_of_several_sensitivities_counts()
        => Assert.Equal(1250, Shots.FactsOf(ExifTag.PhotographicSensitivity, ExifValue.Word(1250, 0)).Speed!.Value.Iso);
}
